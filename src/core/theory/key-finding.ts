import { pitchClassOf, remembered, rememberedAmong, rememberedFor, sameName } from '../base';
import { nameOfDegree } from './degrees';
import { durationsOf, firstOf, judge, musicOf, sameSound, type WeightedNote } from './key-fit';
import { profileCorrelation } from './key-profiles';
import { ALL_KEYS, keyNames, keySignature, sameKey } from './keys';
import { describeKeyIn, formatChordIn, type Naming } from './naming';
import type { Chord, Key, KeyGuess, WeightedChord } from './types';

export interface KeyFindingOptions {
  /** The music comes round again, so that the last chord leads to the first. */
  readonly loops?: boolean;
  /** The line over the chords, where there is one. */
  readonly notes?: readonly WeightedNote[];
  /** How the reasons name notes, chords and keys; letters when left out. */
  readonly noteNames?: Naming;
}

/** A line that fits a key perfectly weighs as much as this many points of its chords. */
const LINE = 0.4;
/** By so much the home of a vamp is put before every other key. */
const VAMP = 0.05;
/** Keys no further apart than this are told as two ways to hear the same chords. */
const CLOSE = 0.15;

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
      const music = musicOf(chords, total, loops);
      return ALL_KEYS.map((key) => judge(key, music, naming));
    });
  });
}
