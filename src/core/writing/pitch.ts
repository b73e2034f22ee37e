import {
  halfStepsAboveC,
  type Letter,
  type MidiNumber,
  midiOf,
  pitchClassOf,
  type SpelledName,
  type SpelledPitch,
} from '../base';
import type { Instrument } from '../fretboard';
import { rangeOf } from '../fretboard';
import { type Chord, type Key, keyNames, scaleFor, spellMidi } from '../theory';
import { playable } from './context';

/** The harmony that a pitch is chosen over. */
export interface Harmony {
  readonly chord: Chord | null;
  readonly key: Key;
}

/** Seven names upwards from the root: the chord's scale in its key; without a chord, the key's own. */
export const stepsOver = ({ chord, key }: Harmony): readonly SpelledName[] =>
  chord === null ? keyNames(key) : scaleFor(chord, key).names;

/** A name as a pitch in the octave that sounds at or above C of a number. */
const inOctave = (name: SpelledName, octave: number): SpelledPitch => ({
  letter: name.letter,
  alteration: name.alteration,
  octave,
});

/** Where a line begins when nothing went before: around A1, in the low octave that is a bass line's home (common practice, no source). */
export const HOME = 33;

/**
 * A name in the octave that lies nearest to a note; the lower of two that lie equally near. Only pitches that the
 * instrument has; null where it has none.
 */
export function nearest(name: SpelledName, to: number | null, instrument: Instrument): SpelledPitch | null {
  const around = to ?? HOME;
  const octave = Math.floor((around - halfStepsAboveC(name)) / 12) - 1;
  const candidates = [octave - 1, octave, octave + 1, octave + 2]
    .map((each) => inOctave(name, each))
    .filter((pitch) => playable(instrument, 12 * (pitch.octave + 1) + halfStepsAboveC(pitch)));
  return candidates.reduce<SpelledPitch | null>(
    (best, pitch) =>
      best === null || Math.abs(midiOf(pitch) - around) < Math.abs(midiOf(best) - around) ? pitch : best,
    null,
  );
}

/** The next step of the scale above or below a pitch; null where the instrument ends. */
export function scaleStepFrom(
  pitch: SpelledPitch,
  way: 1 | -1,
  harmony: Harmony,
  instrument: Instrument,
): SpelledPitch | null {
  const from = midiOf(pitch);
  const { lowest, highest } = rangeOf(instrument);
  const names = stepsOver(harmony);
  for (let midi = from + way; midi >= lowest && midi <= highest; midi += way) {
    const name = names.find((each) => pitchClassOf(each) === midi % 12);
    if (name !== undefined) return inOctave(name, Math.round((midi - halfStepsAboveC(name)) / 12) - 1);
  }
  return null;
}

/** A half step up or down: spelled by chord and key where it belongs there, else raised going up, lowered going down. */
export function halfStepFrom(
  pitch: SpelledPitch,
  way: 1 | -1,
  harmony: Harmony,
  instrument: Instrument,
): SpelledPitch | null {
  const midi = midiOf(pitch) + way;
  if (!playable(instrument, midi)) return null;
  return spell(midi, harmony, way === 1 ? 'up' : 'down');
}

export const spell = (midi: MidiNumber, { chord, key }: Harmony, direction?: 'up' | 'down'): SpelledPitch =>
  spellMidi(midi, {
    key,
    ...(chord === null ? {} : { chord }),
    ...(direction === undefined ? {} : { direction }),
  });

/** An octave up or down, where the instrument has it. */
export function octaveFrom(pitch: SpelledPitch, way: 1 | -1, instrument: Instrument): SpelledPitch | null {
  const moved = { ...pitch, octave: pitch.octave + way };
  return playable(instrument, midiOf(pitch) + 12 * way) ? moved : null;
}

/** A pitch as a number that may lie outside of MIDI's range. */
export const midiOfAny = (pitch: SpelledPitch): number => (pitch.octave + 1) * 12 + halfStepsAboveC(pitch);

/** A letter as it stands in the scale over the harmony: `b` is B♭ over C7 in F major. */
export const nameFor = (letter: Letter, harmony: Harmony): SpelledName =>
  stepsOver(harmony).find((name) => name.letter === letter) ?? { letter, alteration: 0 };
