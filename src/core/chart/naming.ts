import { remembering } from '../base';
import {
  formatChordIn,
  formatNameIn,
  keyInLetters,
  LONGEST_SYMBOL,
  type Naming,
  parseChord,
  parseKey,
  splitSymbol,
  suggestChord,
  symbolInLetters,
  typedKeyIn,
  typedSymbolIn,
  unreadableKey,
  unreadableSymbol,
} from '../theory';
import { splitSlashes } from './bar-reader';
import { classifyLine, saidIn } from './lines';
import { rewriteTokens, type TokenWriter } from './rewrite';
import { scanLine, type Token } from './scanner';
import { textAt } from './text';
import { splitKey } from './typed-key';
import type { ChartPlace, ChartProblem } from './types';

/*
 * A chart is stored in letters, so that its meaning never hangs on a setting. Where the lesson has other note names,
 * it is typed with those: the page shows the stored text in them, and stores what is typed in letters.
 */

type Rename = (text: string) => string;

function renaming(symbol: Rename, key: Rename): TokenWriter {
  return (token) => {
    if (token.kind === 'word') {
      const { push, chord, beats } = splitSlashes(token.text);
      return push + symbol(chord) + '/'.repeat(beats);
    }
    const said = token.kind === 'directive' ? splitKey(token.text) : null;
    return said ? `(${said.word}${key(said.name)})` : null;
  };
}

/**
 * A line of names longer than letters have, such as `Solm Do7`, reads as words; `Solo` is one. It stays a line of
 * bars while its other chords are half typed, as it does in letters.
 */
const isBarsIn =
  (naming: Naming) =>
  (said: string): boolean => {
    const [first = ''] = said.trim().split(/\s+/);
    return !/^solo$/i.test(first) && parseChord(symbolInLetters(naming, first)).ok;
  };

/** The stored chart text as it is typed with the note names of a naming; everything else letter for letter. */
export const typedChartIn = (naming: Naming, text: string): string =>
  naming === 'letters'
    ? text
    : rewriteTokens(
        text,
        renaming(
          (symbol) => typedSymbolIn(naming, symbol),
          (key) => typedKeyIn(naming, key),
        ),
      );

/** The chart text to store, in letters, for one that is typed with the note names of a naming. */
export const chartInLetters = (naming: Naming, typed: string): string =>
  naming === 'letters'
    ? typed
    : rewriteTokens(
        typed,
        renaming(
          (symbol) => symbolInLetters(naming, symbol),
          (key) => keyInLetters(naming, key),
        ),
        isBarsIn(naming),
      );

/**
 * How many characters of a stored chart stand before a place in what was typed for it, counted in characters too; null
 * inside a name that is another in letters.
 */
export function caretInLetters(naming: Naming, typed: string, caret: number, stored: string): number | null {
  const before = chartInLetters(naming, typed.slice(0, caret));
  return stored.startsWith(before) ? before.length : null;
}

/** {@link typedChartIn} for the chords of one bar, which no bar lines tell from words. */
export const typedChordsIn = (naming: Naming, chords: string): string =>
  typedChartIn(naming, `|${chords}|`).slice(1, -1);

/** {@link chartInLetters} for the chords of one bar. */
export const chordsInLetters = (naming: Naming, typed: string): string =>
  chartInLetters(naming, `|${typed}|`).slice(1, -1);

/**
 * A problem of the stored chart text as it is met in the typed one: its place, and the chord and the guess by the
 * names that are typed there.
 */
export function typedProblem(
  naming: Naming,
  stored: string,
  typed: string,
  problem: ChartProblem,
): ChartProblem {
  if (naming === 'letters') return problem;
  const place = typedPlace(stored, typed, problem);
  const [word, shown] = [textAt(stored, problem), textAt(typed, place)];
  const { suggestion } = problem;
  return {
    ...place,
    message: messageIn(naming, word, shown, problem.message),
    ...(suggestion === undefined ? {} : { suggestion: typedChordsIn(naming, suggestion) }),
  };
}

/**
 * A problem of the stored chart text with the guess at what is meant by small letters in German names: `b7` is not
 * the letters' B7 there, nor `es7` one on E.
 */
export function guessedIn(
  naming: Naming,
  stored: string,
  typed: string,
  problem: ChartProblem,
): ChartProblem {
  if (naming !== 'german' || problem.suggestion === undefined) return problem;
  const word = textAt(typed, typedPlace(stored, typed, problem));
  if (!/^[a-h]/.test(word)) return problem;
  const suggestion = suggestChord(symbolInLetters(naming, word.charAt(0).toUpperCase() + word.slice(1)));
  return suggestion === null ? problem : { ...problem, suggestion };
}

function messageIn(naming: Naming, word: string, shown: string, message: string): string {
  if (word.length > LONGEST_SYMBOL) return message;
  const said = word.startsWith('(') && word.endsWith(')') ? splitKey(word.slice(1, -1)) : null;
  const key = said && parseKey(said.name);
  // What letters say of an H holds for fixed do, too.
  const isGerman = naming === 'fixed do' && /^H/.test(said?.name ?? '');
  if (key?.ok === false && message === key.problem.message && !isGerman)
    return unreadableKey(keyExamplesIn(naming)).message;
  const chord = parseChord(word);
  const root = splitSymbol(word)?.root;
  if (chord.ok || message !== chord.problem.message || /^[a-g]/.test(word))
    return message.replaceAll(`“${word}”`, `“${shown}”`);
  return unreadableSymbol(shown, root ? formatNameIn(naming, root) : null, examplesIn(naming)).message;
}

const keyExamplesIn = (naming: Naming): string =>
  ['F', 'B♭', 'Dm', 'E♭ minor'].map((key) => typedKeyIn(naming, key)).join(', ');

function examplesIn(naming: Naming): string {
  const [one, other, third] = ['Dm7', 'B♭maj7', 'F/A'].map((symbol) => {
    const chord = parseChord(symbol);
    return chord.ok ? formatChordIn(naming, chord.value) : symbol;
  });
  return `${one}, ${other} or ${third}`;
}

/** Where in the typed text a place of the stored one is: both have the same signs and words, line by line. */
function typedPlace(stored: string, typed: string, place: ChartPlace): ChartPlace {
  const tokens = tokensAt(stored, place.line);
  const others = tokensAt(typed, place.line);
  const end = place.column + place.length;
  const first = tokens.findIndex((token) => token.place.column + token.place.length > place.column);
  const last = tokens.findLastIndex((token) => token.place.column < end);
  const from = others[first]?.place;
  const to = others[last]?.place;
  const { line, column, length } = place;
  if (from === undefined || to === undefined || last < first) return { line, column, length };
  return { line, column: from.column, length: to.column + to.length - from.column };
}

/** The signs and words of a line of bars, counted as line 1; none of another line. */
const tokensAt = (text: string, line: number): readonly Token[] =>
  tokensIn(text.split(/\r\n|\r|\n/)[line - 1] ?? '');

/** Every problem of a line asks for its signs, stored and typed. */
const tokensIn = remembering((line): readonly Token[] => {
  const { kind } = classifyLine(line, () => false);
  return kind === 'bars' || kind === 'unnamed words' ? scanLine(saidIn(line), 1) : [];
}, 8);
