import { pitchClassOf, remembered, type SpelledName, sameName } from '../base';
import { nameOfDegree } from './degrees';
import { profileCorrelation } from './key-profiles';
import { reasonFor } from './key-reasons';
import { keyNames } from './keys';
import type { Naming } from './naming';
import type { Chord, Key, KeyGuess, WeightedChord } from './types';

/* How well chords fit a key: what each does in it, its cadences, where it begins and ends, and what sounds in all. */

/** A note and how long it sounds. */
export interface WeightedNote {
  readonly name: SpelledName;
  readonly weight: number;
}

interface Points {
  readonly tonic: number;
  readonly first: number;
  readonly last: number;
  /** For a dominant that goes home, by the share of time it takes. */
  readonly cadence: number;
  /** The same where the dominant came from home: I V I is as much IV I IV of another key. */
  readonly backAndForth: number;
  readonly lastCadence: number;
  /** For the match of all chord tones, weighted by time, with the key's profile. */
  readonly tones: number;
}

/** What a chord earns besides for its function in a key (common practice, no source). */
const POINTS = { dominant: 1.25, subdominant: 1.1, other: 1, chromatic: 0.35, outside: -0.6 };
/** A passage that arrives, like a modulation: its cadence tells the key. */
const ARRIVING: Points = {
  tonic: 1.4,
  first: 0.08,
  last: 0.12,
  cadence: 0.3,
  backAndForth: 0.3,
  lastCadence: 0.25,
  tones: 0,
};
/**
 * Music that comes round again: the sum of what sounds tells more than where it stops. Chosen on half of the songs
 * that the tests read (Isophonics; Rock Corpus, de Clercq and Temperley 2011), the others left aside.
 */
const ROUND: Points = {
  tonic: 1.6,
  first: 0.22,
  last: 0.06,
  cadence: 0.4,
  backAndForth: 0,
  lastCadence: 0.12,
  tones: 0.8,
};
/** Lost by a chord spelled as the key would not spell it: F♯ in D♭ major. */
const MISSPELLED = 0.2;
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

function fitOf(chord: Chord, notes: KeyNotes, tonic: number): Fit {
  const core = chord.tones.filter(({ degree }) => degree.step !== 2 && degree.step !== 6);
  const strange = core.filter(({ name }) => !notes.sounds.has(pitchClassOf(name)));
  const misspelled = core.some(
    ({ name }) => notes.sounds.has(pitchClassOf(name)) && !notes.names.some((own) => sameName(own, name)),
  );
  const cost = misspelled ? MISSPELLED : 0;
  const place = aboveTonic(chord, notes.key);
  if (strange.length === 0)
    return { points: pointsAt(place, chord, notes.key, tonic) - cost, diatonic: !misspelled };
  // A tonic or subdominant with a minor seventh is the sound of blues and ska, not another key.
  const onlySeventh = strange.every(({ degree }) => degree.step === 7);
  if (onlySeventh && notes.key.mode === 'major' && (place === 0 || place === 5)) {
    return { points: POINTS.other - cost, diatonic: false };
  }
  const share = strange.length / Math.max(1, core.length);
  return { points: (share <= 0.34 ? POINTS.chromatic : POINTS.outside * share) - cost, diatonic: false };
}

function pointsAt(place: number, chord: Chord, key: Key, tonic: number): number {
  if (place === 0) return hasThirdOf(chord, key) ? tonic : POINTS.other;
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

const tonesOf = (chords: readonly WeightedChord[]): readonly WeightedNote[] =>
  chords.flatMap(({ chord, weight }) => chord.tones.map(({ name }) => ({ name, weight })));

/** The chord a piece begins with, an upbeat left out. */
export const firstOf = (chords: readonly WeightedChord[]): Chord | undefined =>
  (chords.find(({ upbeat = false }) => !upbeat) ?? chords[0])?.chord;

export const sameSound = (one: Chord, other: Chord): boolean =>
  pitchClassOf(one.root) === pitchClassOf(other.root);

/** How long each pitch class sounds, from C. */
export function durationsOf(notes: readonly WeightedNote[]): readonly number[] {
  const durations = Array.from({ length: 12 }, () => 0);
  for (const { name, weight } of notes) {
    const pitchClass = pitchClassOf(name);
    durations[pitchClass] = (durations[pitchClass] ?? 0) + weight;
  }
  return durations;
}

/** Chords as every key is asked about them: a chart has many, but few different ones. */
interface Music {
  readonly chords: readonly WeightedChord[];
  readonly total: number;
  readonly loops: boolean;
  /** How long each pitch class sounds in the chords. */
  readonly tones: readonly number[];
  /** The different chords, in the order in which they first sound. */
  readonly kinds: readonly Chord[];
  /** For each chord its place among these. */
  readonly kindAt: readonly number[];
  /** For each chord the last one of another root before it; in a loop, of the last chord, where there is none. */
  readonly cameFrom: readonly (Chord | undefined)[];
}

/** Reads chords once for all keys. */
export function musicOf(chords: readonly WeightedChord[], total: number, loops: boolean): Music {
  const kinds: Chord[] = [];
  const places = new Map<string, number>();
  const kindAt = chords.map(({ chord }) => remembered(places, chord.symbol, () => kinds.push(chord) - 1));
  let before = loops ? chords.at(-1)?.chord : undefined;
  const cameFrom = chords.map(({ chord }, index) => {
    const previous = chords[index - 1]?.chord;
    if (previous && !sameSound(previous, chord)) before = previous;
    return before;
  });
  return { chords, total, loops, tones: durationsOf(tonesOf(chords)), kinds, kindAt, cameFrom };
}

/** What the chords say of a key. */
export function judge(key: Key, music: Music, naming: Naming): KeyGuess {
  const { chords, total, loops, tones, kinds, kindAt } = music;
  const worth = loops ? ROUND : ARRIVING;
  const notes = notesOf(key);
  const fits = kinds.map((chord) => fitOf(chord, notes, worth.tonic));
  const points = chords.reduce(
    (sum, { weight }, index) => sum + weight * (fits[kindAt[index] ?? -1]?.points ?? 0),
    0,
  );
  const begins = isTonic(firstOf(chords), key);
  const ends = isTonic(chords.at(-1)?.chord, key);
  const before = chords.at(-2)?.chord;
  const cadences = cadencesIn(music, key);
  const cadencePoints = cadences.reduce(
    (sum, { weight, fromHome }) => sum + weight * (fromHome ? worth.backAndForth : worth.cadence),
    0,
  );
  const score =
    (points + cadencePoints) / total +
    worth.tones * profileCorrelation(tones, pitchClassOf(key.tonic), key.mode) +
    (begins ? worth.first : 0) +
    (ends ? worth.last : 0) +
    (ends && before && isDominantOf(before, key) ? worth.lastCadence : 0);
  const home = { begins, ends, cadence: cadences[0]?.chord ?? null };
  const strangers = kinds.filter((_, kind) => !fits[kind]?.diatonic);
  return { key, score, reason: reasonFor(key, { count: chords.length, kinds, strangers }, home, naming) };
}

interface Cadence extends WeightedChord {
  readonly fromHome: boolean;
}

/** The dominants that go home in a key. */
function cadencesIn({ chords, loops, kinds, kindAt, cameFrom }: Music, key: Key): readonly Cadence[] {
  const leads = kinds.map((chord) => isDominantOf(chord, key));
  const rests = kinds.map((chord) => isTonic(chord, key));
  return chords.flatMap(({ chord, weight }, index) => {
    const next = kindAt[index + 1] ?? (loops ? 0 : -1);
    if (!leads[kindAt[index] ?? -1] || !rests[next]) return [];
    const from = cameFrom[index];
    return [{ chord, weight, fromHome: from !== undefined && aboveTonic(from, key) === 0 }];
  });
}
