import {
  pitchClassOf,
  remembered,
  rememberedAmong,
  rememberedFor,
  type SpelledName,
  sameName,
} from '../base';
import { nameOfDegree } from './degrees';
import { profileCorrelation } from './key-profiles';
import { reasonFor } from './key-reasons';
import { ALL_KEYS, keyNames, keySignature, sameKey } from './keys';
import { describeKeyIn, formatChordIn, type Naming } from './naming';
import type { Chord, Key, KeyGuess, WeightedChord } from './types';

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
/** A line that fits a key perfectly weighs as much as this many points of its chords. */
const LINE = 0.4;
/** By so much the home of a vamp is put before every other key. */
const VAMP = 0.05;
/** Keys no further apart than this are told as two ways to hear the same chords. */
const CLOSE = 0.15;

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

/**
 * Guesses at the key, best first, all {@link ALL_KEYS} among them. The score is points per unit of time for
 * what each chord does in the key, for cadences, the first and the last chord, and for how the notes of the
 * chords and of the line match the key's profile. A vamp of two chords is at home on the one it begins with.
 * Without chords the line alone decides; without either the list is empty.
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
  const judged = total > 0 ? judgedKeys(chords, total, loops, noteNames) : [];
  const guesses = ALL_KEYS.map((key, index): KeyGuess => {
    const line = heard ? LINE * profileCorrelation(durations, pitchClassOf(key.tonic), key.mode) : 0;
    const guess = judged[index];
    if (guess === undefined) {
      const reason = `The notes of the line fit ${describeKeyIn(noteNames, key)}.`;
      return { key, score: line - spellingCost(key, options.notes ?? []), reason };
    }
    return { ...guess, score: guess.score + line };
  }).sort(inOrder);
  const home = loops ? keyOfVamp(chords) : null;
  return home === null ? guesses : withHome(guesses, home, firstOf(chords), noteNames);
}

const inOrder = (one: KeyGuess, other: KeyGuess): number =>
  other.score - one.score || Math.abs(keySignature(one.key)) - Math.abs(keySignature(other.key));

/**
 * The second guess where the chords can be heard in two keys, nearly as well in the one as in the other; null
 * where one key is clearly the best.
 */
export function closeGuess(guesses: readonly KeyGuess[]): KeyGuess | null {
  const [best, second] = guesses;
  return best && second && best.score - second.score <= CLOSE ? second : null;
}

const tonesOf = (chords: readonly WeightedChord[]): readonly WeightedNote[] =>
  chords.flatMap(({ chord, weight }) => chord.tones.map(({ name }) => ({ name, weight })));

/** The chord a piece begins with, an upbeat left out. */
const firstOf = (chords: readonly WeightedChord[]): Chord | undefined =>
  (chords.find(({ upbeat = false }) => !upbeat) ?? chords[0])?.chord;

/**
 * The key of a vamp of two roots (common practice, no source): that of the first chord, which has the strong place,
 * unless it is a dominant seventh that a chord without one answers a fifth below; ii7 V7 leads home to a chord that
 * does not sound. Null for any other music.
 */
function keyOfVamp(chords: readonly WeightedChord[]): Key | null {
  const first = firstOf(chords);
  const roots = new Set(chords.map(({ chord }) => pitchClassOf(chord.root)));
  const second = chords.find(({ chord }) => first && !sameSound(chord, first))?.chord;
  if (first === undefined || second === undefined || roots.size !== 2) return null;
  const fourthUp = (pitchClassOf(second.root) - pitchClassOf(first.root) + 12) % 12 === 5;
  if (first.family === 'dominant' && second.family !== 'dominant' && fourthUp) return keyOn(second);
  if (first.family === 'minor' && second.family === 'dominant' && fourthUp) {
    return { tonic: nameOfDegree(second.root, { step: 4, alteration: 0 }), mode: 'major' };
  }
  return keyOn(first);
}

/** The key in which a chord is home; null for one that no key rests on. */
function keyOn({ root, family }: Chord): Key | null {
  if (family === 'minor') return { tonic: root, mode: 'minor' };
  return family === 'major' || family === 'dominant' ? { tonic: root, mode: 'major' } : null;
}

const sameSound = (one: Chord, other: Chord): boolean => pitchClassOf(one.root) === pitchClassOf(other.root);

/** The key of a vamp put first, and close behind it the best of the others: it can be heard so, too. */
function withHome(
  guesses: readonly KeyGuess[],
  home: Key,
  chord: Chord | undefined,
  naming: Naming,
): readonly KeyGuess[] {
  const own = guesses.find(({ key }) => sameKey(key, home));
  const [best, ...others] = guesses.filter((guess) => guess !== own);
  if (own === undefined || best === undefined || chord === undefined) return guesses;
  if (own.score > best.score)
    return [own, { ...best, score: Math.max(best.score, own.score - VAMP) }, ...others];
  const reason = `Of the two chords that go round, ${formatChordIn(naming, chord)} comes first and sounds like home.`;
  return [
    { ...own, score: best.score + VAMP, reason: sameName(chord.root, home.tonic) ? reason : own.reason },
    best,
    ...others,
  ];
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

interface Music {
  readonly chords: readonly WeightedChord[];
  readonly total: number;
  readonly loops: boolean;
  /** How long each pitch class sounds in the chords. */
  readonly tones: readonly number[];
}

/** Chords never change in place: the same list of them, of which one asks again and again as notes are written. */
const judgementsOf = rememberedFor(
  (_chords: readonly WeightedChord[]) => new Map<string, readonly KeyGuess[]>(),
);

/** What tells a list of chords from others: two with the same text are the same music. */
export const weightedText = (chords: readonly WeightedChord[]): string =>
  chords
    .map(({ chord, weight, upbeat = false }) => `${chord.symbol}@${weight}${upbeat ? '^' : ''}`)
    .join(' ');

/** The last lists of chords by what is written: most key presses in a chart leave its chords as they are. */
const bySymbols = new Map<string, readonly KeyGuess[]>();
const MOST_REMEMBERED = 24;

/** What the chords say of every key, in the order of {@link ALL_KEYS}. */
function judgedKeys(
  chords: readonly WeightedChord[],
  total: number,
  loops: boolean,
  naming: Naming,
): readonly KeyGuess[] {
  return remembered(judgementsOf(chords), `${naming} ${loops}`, () => {
    const id = `${naming} ${loops} ${weightedText(chords)}`;
    return rememberedAmong(bySymbols, MOST_REMEMBERED, id, () => {
      const music = { chords, total, loops, tones: durationsOf(tonesOf(chords)) };
      return ALL_KEYS.map((key) => judge(key, music, naming));
    });
  });
}

function judge(key: Key, { chords, total, loops, tones }: Music, naming: Naming): KeyGuess {
  const worth = loops ? ROUND : ARRIVING;
  const notes = notesOf(key);
  // A chart has many chords but few different ones.
  const fitOfSymbol = new Map<string, Fit>();
  const fits = chords.map(({ chord }) => {
    return remembered(fitOfSymbol, chord.symbol, () => fitOf(chord, notes, worth.tonic));
  });
  const points = chords.reduce((sum, { weight }, index) => sum + weight * (fits[index]?.points ?? 0), 0);
  const first = firstOf(chords);
  const last = chords[chords.length - 1]?.chord;
  const before = chords[chords.length - 2]?.chord;
  const cadences = cadencesIn(chords, key, loops);
  const cadencePoints = cadences.reduce(
    (sum, { weight, fromHome }) => sum + weight * (fromHome ? worth.backAndForth : worth.cadence),
    0,
  );
  const score =
    (points + cadencePoints) / total +
    worth.tones * profileCorrelation(tones, pitchClassOf(key.tonic), key.mode) +
    (isTonic(first, key) ? worth.first : 0) +
    (isTonic(last, key) ? worth.last : 0) +
    (before && isDominantOf(before, key) && isTonic(last, key) ? worth.lastCadence : 0);
  const diatonic = fits.map((fit) => fit.diatonic);
  const ends = {
    begins: isTonic(first, key),
    ends: isTonic(last, key),
    cadence: cadences[0]?.chord ?? null,
  };
  return { key, score, reason: reasonFor(key, chords, diatonic, ends, naming) };
}

interface Cadence extends WeightedChord {
  readonly fromHome: boolean;
}

/** The dominants that go home in a key. */
function cadencesIn(chords: readonly WeightedChord[], key: Key, loops: boolean): readonly Cadence[] {
  let cameFrom = loops ? chords[chords.length - 1]?.chord : undefined;
  return chords.flatMap(({ chord, weight }, index) => {
    const previous = chords[index - 1]?.chord;
    if (previous && !sameSound(previous, chord)) cameFrom = previous;
    const next = chords[index + 1]?.chord ?? (loops ? chords[0]?.chord : undefined);
    const fromHome = cameFrom !== undefined && aboveTonic(cameFrom, key) === 0;
    return isDominantOf(chord, key) && isTonic(next, key) ? [{ chord, weight, fromHome }] : [];
  });
}
