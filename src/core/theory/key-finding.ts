import { pitchClassOf, type SpelledName, sameName } from '../base';
import { nameOfDegree } from './degrees';
import { profileCorrelation } from './key-profiles';
import { ALL_KEYS, keyNames, keySignature } from './keys';
import { describeKeyIn, formatChordIn, formatNameIn, type Naming } from './naming';
import type { Chord, Key, KeyGuess } from './types';

/** A chord and how long it sounds, in ticks or any one unit. */
export interface WeightedChord {
  readonly chord: Chord;
  readonly weight: number;
}

/** A note of the line and how long it sounds. */
export interface WeightedNote {
  readonly name: SpelledName;
  readonly weight: number;
}

export interface KeyFindingOptions {
  /** The music comes round again, so that the last chord leads to the first. */
  readonly loops?: boolean;
  /** The line over the chords, where there is one. */
  readonly notes?: readonly WeightedNote[];
  /** How the reasons name notes, chords and keys; letters when left out. */
  readonly noteNames?: Naming;
}

/**
 * Points a chord earns for its function in a key (common practice, no source; chosen on the project's own
 * charts and checked against published analyses in the tests).
 */
const POINTS = { tonic: 1.4, dominant: 1.25, subdominant: 1.1, other: 1, chromatic: 0.35, outside: -0.6 };
const LAST_CHORD = 0.12;
const FIRST_CHORD = 0.08;
const CADENCE = 0.3;
const LAST_CADENCE = 0.25;
/** Lost by a chord spelled as the key would not spell it: F♯ in D♭ major. */
const MISSPELLED = 0.2;
/** A line that fits a key perfectly weighs as much as this many points of its chords. */
const LINE = 0.4;

interface Fit {
  readonly points: number;
  readonly diatonic: boolean;
}

/** The notes a chord may use in a key: the signature's, and in minor the raised seventh too. */
interface KeyNotes {
  readonly key: Key;
  readonly names: readonly SpelledName[];
  readonly sounds: ReadonlySet<number>;
}

function notesOf(key: Key): KeyNotes {
  const own = keyNames(key);
  const names = key.mode === 'minor' ? [...own, nameOfDegree(key.tonic, { step: 7, alteration: 0 })] : own;
  return { key, names, sounds: new Set(names.map(pitchClassOf)) };
}

/** Half steps from the tonic up to the chord's root, by sound. */
const aboveTonic = (chord: Chord, key: Key): number =>
  (pitchClassOf(chord.root) - pitchClassOf(key.tonic) + 12) % 12;

function fitOf(chord: Chord, notes: KeyNotes): Fit {
  const core = chord.tones.filter(({ degree }) => degree.step !== 2 && degree.step !== 6);
  const strange = core.filter(({ name }) => !notes.sounds.has(pitchClassOf(name)));
  const misspelled = core.some(
    ({ name }) => notes.sounds.has(pitchClassOf(name)) && !notes.names.some((own) => sameName(own, name)),
  );
  const cost = misspelled ? MISSPELLED : 0;
  const place = aboveTonic(chord, notes.key);
  if (strange.length === 0)
    return { points: pointsAt(place, chord, notes.key) - cost, diatonic: !misspelled };
  // A tonic or subdominant with a minor seventh is the sound of blues and ska, not another key.
  const onlySeventh = strange.every(({ degree }) => degree.step === 7);
  if (onlySeventh && notes.key.mode === 'major' && (place === 0 || place === 5)) {
    return { points: POINTS.other - cost, diatonic: false };
  }
  const share = strange.length / Math.max(1, core.length);
  return { points: (share <= 0.34 ? POINTS.chromatic : POINTS.outside * share) - cost, diatonic: false };
}

function pointsAt(place: number, chord: Chord, key: Key): number {
  if (place === 0) return hasThirdOf(chord, key) ? POINTS.tonic : POINTS.other;
  if (place === 5) return POINTS.subdominant;
  const minorDominant = key.mode === 'minor' && chord.family === 'minor';
  return place === 7 && !minorDominant ? POINTS.dominant : POINTS.other;
}

const hasThirdOf = (chord: Chord, key: Key): boolean =>
  chord.tones.some(
    ({ degree }) => degree.step === 3 && degree.alteration === (key.mode === 'minor' ? -1 : 0),
  );

const isTonic = (chord: Chord | undefined, key: Key): boolean =>
  chord !== undefined && aboveTonic(chord, key) === 0 && hasThirdOf(chord, key);

/** A chord on 5 with a major third, which leads to the tonic. */
const isDominantOf = (chord: Chord, key: Key): boolean =>
  aboveTonic(chord, key) === 7 && (chord.family === 'dominant' || chord.family === 'major');

/**
 * Guesses at the key, best first, all {@link ALL_KEYS} among them. The score is points per unit of time for
 * what each chord does in the key, for cadences, the first and the last chord, and for how the notes of the
 * line match the key's profile. Without chords the line alone decides; without either the list is empty.
 */
export function findKey(
  chords: readonly WeightedChord[],
  options: KeyFindingOptions = {},
): readonly KeyGuess[] {
  const durations = durationsOf(options.notes ?? []);
  const heard = durations.some((duration) => duration > 0);
  const total = chords.reduce((sum, { weight }) => sum + weight, 0);
  const { loops = true, noteNames = 'letters' } = options;
  if (total <= 0 && !heard) return [];
  return ALL_KEYS.map((key): KeyGuess => {
    const line = heard ? LINE * profileCorrelation(durations, pitchClassOf(key.tonic), key.mode) : 0;
    if (total <= 0) {
      const reason = `The notes of the line fit ${describeKeyIn(noteNames, key)}.`;
      return { key, score: line - spellingCost(key, options.notes ?? []), reason };
    }
    const guess = judge(key, chords, total, loops, noteNames);
    return { ...guess, score: guess.score + line };
  }).sort(
    (one, other) =>
      other.score - one.score || Math.abs(keySignature(one.key)) - Math.abs(keySignature(other.key)),
  );
}

function durationsOf(notes: readonly WeightedNote[]): readonly number[] {
  const durations = Array.from({ length: 12 }, () => 0);
  for (const { name, weight } of notes) {
    const pitchClass = pitchClassOf(name);
    durations[pitchClass] = (durations[pitchClass] ?? 0) + weight;
  }
  return durations;
}

/** Tells keys that sound alike apart: the share of time on notes that the key spells otherwise. */
function spellingCost(key: Key, notes: readonly WeightedNote[]): number {
  const names = keyNames(key);
  const total = notes.reduce((sum, { weight }) => sum + weight, 0);
  const strange = notes.filter(
    ({ name }) =>
      !names.some((own) => sameName(own, name)) &&
      names.some((own) => pitchClassOf(own) === pitchClassOf(name)),
  );
  return total === 0 ? 0 : (0.01 * strange.reduce((sum, { weight }) => sum + weight, 0)) / total;
}

function judge(
  key: Key,
  chords: readonly WeightedChord[],
  total: number,
  loops: boolean,
  naming: Naming,
): KeyGuess {
  const notes = notesOf(key);
  // A chart has many chords but few different ones.
  const fitOfSymbol = new Map<string, Fit>();
  const fits = chords.map(({ chord }) => {
    const fit = fitOfSymbol.get(chord.symbol) ?? fitOf(chord, notes);
    fitOfSymbol.set(chord.symbol, fit);
    return fit;
  });
  const points = chords.reduce((sum, { weight }, index) => sum + weight * (fits[index]?.points ?? 0), 0);
  const first = chords[0]?.chord;
  const last = chords[chords.length - 1]?.chord;
  const before = chords[chords.length - 2]?.chord;
  const pairs = chords.map(({ chord, weight }, index) => {
    const next = chords[index + 1]?.chord ?? (loops ? first : undefined);
    return { chord, next, weight };
  });
  const cadences = pairs.filter(({ chord, next }) => isDominantOf(chord, key) && isTonic(next, key));
  const cadencePoints = cadences.reduce((sum, { weight }) => sum + weight * CADENCE, 0);
  const score =
    (points + cadencePoints) / total +
    (isTonic(first, key) ? FIRST_CHORD : 0) +
    (isTonic(last, key) ? LAST_CHORD : 0) +
    (before && isDominantOf(before, key) && isTonic(last, key) ? LAST_CADENCE : 0);
  return { key, score, reason: reasonFor(key, chords, fits, cadences[0]?.chord, naming) };
}

/** `Dm`, `Dm and A7`, `Dm, A7 and Gm`. */
const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;

function reasonFor(
  key: Key,
  chords: readonly WeightedChord[],
  fits: readonly Fit[],
  cadence: Chord | undefined,
  naming: Naming,
): string {
  const strange = [
    ...new Set(
      chords.filter((_, index) => !fits[index]?.diatonic).map(({ chord }) => formatChordIn(naming, chord)),
    ),
  ];
  const distinct = new Set(chords.map(({ chord }) => chord.symbol)).size;
  const name = describeKeyIn(naming, key);
  const tonic = formatNameIn(naming, key.tonic);
  const belonging =
    strange.length === 0
      ? distinct === 1
        ? `the only chord belongs to ${name}`
        : `every chord belongs to ${name}`
      : strange.length <= 3 && strange.length < distinct
        ? `every chord except ${listed(strange)} belongs to ${name}`
        : `${distinct - strange.length} of ${distinct} different chords belong to ${name}`;
  const begins = isTonic(chords[0]?.chord, key);
  const ends = isTonic(chords[chords.length - 1]?.chord, key);
  const home =
    begins && ends && chords.length > 1
      ? `it begins and ends on ${tonic}`
      : begins
        ? `it begins on ${tonic}`
        : ends
          ? `it ends on ${tonic}`
          : null;
  const leads = cadence ? `${formatChordIn(naming, cadence)} leads back to ${tonic}` : null;
  const sentence = listed([belonging, home, leads].filter((part) => part !== null));
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}
