import {
  type Alteration,
  countedInWords,
  failure,
  halfStepsAboveC,
  LETTERS,
  type Letter,
  type Result,
  type SpelledName,
  success,
} from '../base';
import { intervalBetween } from './intervals';
import { FIFTHS_FROM_MAJOR, parseMode } from './modes';
import { alterationOrNull, formatName, leadingName, nameOnly, spellOnStep, stepOfName } from './names';
import { formatNameIn, type Naming } from './naming';
import type { Interval, Key, Mode } from './types';

/** Letters in the order in which a key signature sharpens them; flats come the other way round. */
const SHARPENED: readonly Letter[] = ['F', 'C', 'G', 'D', 'A', 'E', 'B'];
const FLATTENED: readonly Letter[] = [...SHARPENED].reverse();

/** Fifths from C to a name: F −1, C 0, G 1, B♭ −2. */
const fifthsOf = (name: SpelledName): number => SHARPENED.indexOf(name.letter) - 1 + 7 * name.alteration;

/** The name so many fifths from C; −15 to 19 stay within double flats and sharps. */
function nameAtFifths(fifths: number): SpelledName | null {
  const place = fifths + 1;
  const letter = SHARPENED[((place % 7) + 7) % 7];
  const alteration = alterationOrNull(Math.floor(place / 7));
  return letter && alteration !== null ? { letter, alteration } : null;
}

/**
 * Sharps (positive) or flats (negative) of the signature. The keys in {@link ALL_KEYS} have −7 to 7; a key
 * such as G♯ major gives 8, which no signature can show: see {@link bestEnharmonicKey}.
 */
export const keySignature = (key: Key): number => fifthsOf(key.tonic) + FIFTHS_FROM_MAJOR[key.mode];

/** What the signature does to a letter: −1 for B in F major. */
export function alterationInKey(key: Key, letter: Letter): Alteration {
  const fifths = keySignature(key);
  const order = fifths > 0 ? SHARPENED : FLATTENED;
  const times = Math.floor(Math.abs(fifths) / 7) + (order.indexOf(letter) < Math.abs(fifths) % 7 ? 1 : 0);
  return alterationOrNull(fifths > 0 ? times : 0 - times) ?? 0;
}

/** The seven notes of the key upwards from its tonic, as the signature spells them (minor is natural minor). */
export function keyNames(key: Key): readonly SpelledName[] {
  const first = stepOfName(key.tonic);
  return LETTERS.map((_, step) => LETTERS[(first + step) % 7] ?? 'C').map((letter) => ({
    letter,
    alteration: alterationInKey(key, letter),
  }));
}

/** `F major`, `E♭ minor`. */
export const describeKey = (key: Key): string => `${formatName(key.tonic)} ${key.mode}`;

/** The signature in words: `one flat (B♭)`, `two sharps (F♯, C♯)`, `no sharps or flats`. */
export function describeSignature(key: Key, naming: Naming = 'letters'): string {
  const fifths = keySignature(key);
  const count = Math.abs(fifths);
  if (count === 0) return 'no sharps or flats';
  const kind = fifths > 0 ? 'sharp' : 'flat';
  const order = fifths > 0 ? SHARPENED : FLATTENED;
  const names = order
    .slice(0, Math.min(count, 7))
    .map((letter) => formatNameIn(naming, { letter, alteration: alterationInKey(key, letter) }));
  return `${countedInWords(count, kind)} (${names.join(', ')})`;
}

/** The keys of a mode that a signature can show, from seven flats to seven sharps. */
export const keysOfMode = (mode: Mode): readonly Key[] =>
  Array.from({ length: 15 }, (_, place) => place - 7).flatMap((fifths) => {
    const tonic = nameAtFifths(fifths - FIFTHS_FROM_MAJOR[mode]);
    return tonic ? [{ tonic, mode }] : [];
  });

/** Every key a signature can show: 15 major and 15 minor, each mode from seven flats to seven sharps. */
export const ALL_KEYS: readonly Key[] = [...keysOfMode('major'), ...keysOfMode('minor')];

/**
 * The same key in its simpler spelling: D♭ major for C♯ major, G♯ minor for A♭ minor. Six flats and six sharps
 * are equally simple, so G♭ and F♯ major stay as they are.
 */
export function bestEnharmonicKey(key: Key): Key {
  const fifths = keySignature(key);
  const shift = fifths > 6 ? -12 : fifths < -6 ? 12 : 0;
  if (shift === 0) return { tonic: nameOnly(key.tonic), mode: key.mode };
  const tonic = nameAtFifths(fifthsOf(key.tonic) + shift);
  return tonic ? { tonic, mode: key.mode } : key;
}

/** The key that is taken where none is known: in a chart without chords, for notes without a signature. */
export const C_MAJOR: Key = { tonic: { letter: 'C', alteration: 0 }, mode: 'major' };

export const sameKey = (one: Key, other: Key): boolean =>
  one.mode === other.mode &&
  one.tonic.letter === other.tonic.letter &&
  one.tonic.alteration === other.tonic.alteration;

const GERMAN_KEY = {
  message: 'In letters the German H is B, and the German B is B♭. German names can be chosen as note names.',
};

/** Why a text is no key, in one sentence with examples in the names that are typed there. */
export const unreadableKey = (examples: string): { readonly message: string } => ({
  message: `A key is a note name, with m or “minor” for a minor key, or with a mode like “dorian”: ${examples}.`,
});

/** Reads `F`, `Bb`, `Dm`, `F# minor`, `E♭ major`, `D dorian`; the problem is one sentence. */
export function parseKey(text: string): Result<Key, { readonly message: string }> {
  const trimmed = text.trim();
  const leading = leadingName(trimmed);
  const mode = leading === null ? null : parseMode(trimmed.slice(leading.length).trim());
  return leading && mode !== null
    ? success({ tonic: leading.name, mode })
    : failure(/^H/.test(trimmed) ? GERMAN_KEY : unreadableKey('F, B♭, Dm, E♭ minor'));
}

/** A key to go to and the interval that brings every note there. */
export interface Transposition {
  readonly key: Key;
  readonly interval: Interval;
}

/**
 * The way from one key to another of any tonic: up or down, whichever is nearer (a tritone goes up). The mode
 * of `to` does not matter, the tonic leads.
 */
export function transpositionTo(from: Key, to: SpelledName): Transposition {
  const up = intervalBetween(from.tonic, to);
  const interval = up.halfSteps > 6 ? { steps: up.steps - 7, halfSteps: up.halfSteps - 12 } : up;
  return { key: { tonic: nameOnly(to), mode: from.mode }, interval };
}

/**
 * The key so many half steps away (−11 to 11, or beyond by octaves) in its better spelling: fewer sharps or
 * flats; for six of either, flats when coming from a flat key. The interval keeps the direction and octaves.
 */
export function transpositionBy(from: Key, halfSteps: number): Transposition {
  const start = stepOfName(from.tonic);
  const sounding = halfStepsAboveC(from.tonic) + halfSteps;
  const candidates = [-1, 0, 1].map((shift) => {
    const step = start + Math.round((halfSteps * 7) / 12) + shift;
    const pitch = spellOnStep(step, sounding);
    const key = { tonic: nameOnly(pitch), mode: from.mode };
    return { key, interval: { steps: pitch.octave * 7 + stepOfName(pitch) - start, halfSteps } };
  });
  const preferFlats = keySignature(from) < 0;
  const cost = ({ key, interval }: Transposition) => {
    const fifths = keySignature(key);
    const wrongSide = preferFlats ? fifths > 0 : fifths < 0;
    const stays = halfSteps % 12 === 0 && interval.steps % 7 === 0;
    return stays ? -1 : Math.abs(fifths) + (wrongSide ? 0.5 : 0);
  };
  return candidates.reduce((best, candidate) => (cost(candidate) < cost(best) ? candidate : best));
}
