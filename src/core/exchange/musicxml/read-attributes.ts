import type { SpelledPitch } from '../../base';
import { type Interval, MODES, type Mode } from '../../theory';
import type { FoundMetre } from '../reading/found';
import type { RawKey } from './raw';
import { readPitch } from './read-note';
import { childOf, childrenOf, numberOf, readNumber, textOf, type XmlNode } from './xml-tree';

/** Steps of the staff for half steps within an octave, where the file does not say them. */
const STEPS_OF: readonly number[] = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6];

/** From writing to sound; null for a transposition that makes no sense. */
export function readTranspose(node: XmlNode): Interval | null {
  const chromatic = numberOf(node, 'chromatic') ?? 0;
  const octaves = (numberOf(node, 'octave-change') ?? 0) - (childOf(node, 'double') === undefined ? 0 : 1);
  const within = ((chromatic % 12) + 12) % 12;
  const guessed = (STEPS_OF[within] ?? 0) + 7 * Math.floor(chromatic / 12);
  const diatonic = numberOf(node, 'diatonic') ?? guessed;
  const interval = { steps: diatonic + 7 * octaves, halfSteps: chromatic + 12 * octaves };
  const sensible = [interval.steps, interval.halfSteps].every(
    (value) => Number.isInteger(value) && Math.abs(value) <= 60,
  );
  // The staff step must be near the sound, or no accidental could write it.
  return sensible && Math.abs(interval.halfSteps - (interval.steps * 12) / 7) < 2 ? interval : null;
}

const UNITS: readonly number[] = [1, 2, 4, 8, 16, 32];
const MOST_BEATS = 64;

/** `3+2` and 8 are five eighths; null for a metre that is none. */
export function readMetre(time: XmlNode): FoundMetre | null {
  const counts = childrenOf(time, 'beats').map(({ text }) =>
    text.split('+').reduce((sum, part) => sum + (readNumber(part) ?? Number.NaN), 0),
  );
  const units = childrenOf(time, 'beat-type').map(({ text }) => readNumber(text) ?? Number.NaN);
  if (counts.length === 0 || counts.length !== units.length) return null;
  const finest = Math.max(...units);
  const count = counts.reduce((sum, beats, index) => sum + (beats * finest) / (units[index] ?? finest), 0);
  const makesSense = UNITS.includes(finest) && Number.isInteger(count) && count >= 1 && count <= MOST_BEATS;
  return makesSense ? { count, unit: finest } : null;
}

/** MusicXML 4.0, element `mode`: two of its names mean major and minor. */
const MODE_NAMES: ReadonlyMap<string, Mode> = new Map<string, Mode>([
  ...MODES.map((mode): [string, Mode] => [mode, mode]),
  ['ionian', 'major'],
  ['aeolian', 'minor'],
]);

/** Null for a signature that is not one of sharps or flats in their order. */
export function readKey(key: XmlNode, interval: Interval): RawKey | null {
  const fifths = numberOf(key, 'fifths');
  if (fifths === null || !Number.isInteger(fifths) || Math.abs(fifths) > 7) return null;
  return { fifths, mode: MODE_NAMES.get(textOf(key, 'mode') ?? '') ?? null, interval };
}

/** The open strings of a tab by its lines from the lowest; null where none can be read. */
export function readTuning(details: XmlNode): ReadonlyMap<number, SpelledPitch> | null {
  const lines = new Map<number, SpelledPitch>();
  for (const tuning of childrenOf(details, 'staff-tuning')) {
    const line = readNumber(tuning.attributes.line);
    const pitch = readPitch(tuning, 'tuning-');
    if (line !== null && pitch !== null) lines.set(line, pitch);
  }
  return lines.size === 0 ? null : lines;
}
