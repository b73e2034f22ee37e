import { type Metre, metreName, sameMetre } from '../base';
import { type Key, parseChord, sameKey } from '../theory';
import { splitSlashes } from './bar-reader';
import { barText } from './bar-text';
import { barSignature } from './harmony';
import { parseChart } from './parse';
import { PUSH_SIGN } from './pushes';
import { type BarLine, before, behind, isAgain, rewritePlace, textAt, tokensOf } from './text';
import { typedKey } from './typed-key';
import type { Chart, ChartBar, ChartPlace, ParsedChart } from './types';

/** What a bar of a changed chart is meant to be. */
export interface MeantBar {
  /** Index of the bar before the change that it goes on as; null for a new one. */
  readonly origin: number | null;
  /** What it has to be; null where that is for the text to say. */
  readonly bar: ChartBar | null;
  /** Its chords are for the text to say. */
  readonly rewritten?: boolean;
  /** Its repeat signs and endings are for the text to say. */
  readonly loose?: boolean;
}

/** How a chart is read, apart from its text. */
export interface Reading {
  readonly metre: Metre;
  readonly key: Key | null;
}

/** What a changed text is settled by. */
export interface Settling extends Reading {
  /** The text before the change, in whose words a `%` is written out. */
  readonly text: string;
  readonly chart: Chart;
  /** The key to write for bars outside every key directive. */
  readonly home?: Key;
}

const sameNumbers = (one: readonly number[] | null, other: readonly number[] | null): boolean =>
  one?.join() === other?.join();

const sameKeys = (one: Key | null, other: Key | null): boolean =>
  one === null || other === null ? one === other : sameKey(one, other);

/**
 * Mends a changed text until every bar is what it is meant to be: a metre or key that would be another is written
 * before the bar, a `%` or slash that would mean something else is written out, and a last ending that would grow or
 * shrink is closed by a double bar line. Null where the text cannot say it.
 */
export function settle(text: string, meant: readonly MeantBar[], settling: Settling): string | null {
  const home = settling.home ?? null;
  let now = text;
  for (let round = 0; round <= 3 * meant.length; round += 1) {
    const { chart } = parseChart(now, settling.metre, settling.key);
    if (chart.bars.length !== meant.length) return null;
    const index = meant.findIndex((each, at) => !isAsMeant(chart.bars[at], each, home));
    const actual = chart.bars[index];
    const wanted = meant[index]?.bar;
    if (actual === undefined || !wanted) return now;
    if (isAgain(chart, actual)) return null;
    const mended = mend(now, chart, index, wanted, meant, settling);
    if (mended === null || mended === now) return null;
    now = mended;
  }
  return null;
}

function isAsMeant(
  actual: ChartBar | undefined,
  { bar, rewritten, loose }: MeantBar,
  home: Key | null,
): boolean {
  if (actual === undefined || bar === null) return true;
  return (
    sameMetre(actual.metre, bar.metre) &&
    actual.pickup === bar.pickup &&
    sameKeys(actual.key ?? home, bar.key ?? home) &&
    (rewritten === true || ownSignature(actual) === ownSignature(bar)) &&
    (loose === true || sameFrame(actual, bar))
  );
}

/** The harmony of a bar as it is written in it, whatever the next one pushes into its end. */
const ownSignature = (bar: ChartBar): string => (bar.pushed ? PUSH_SIGN : '') + barSignature(bar);

const sameFrame = (one: ChartBar, other: ChartBar): boolean =>
  one.repeatStart === other.repeatStart &&
  one.repeatEnd === other.repeatEnd &&
  sameNumbers(one.ending, other.ending);

function mend(
  text: string,
  chart: Chart,
  index: number,
  wanted: ChartBar,
  meant: readonly MeantBar[],
  settling: Settling,
): string | null {
  const home = settling.home ?? null;
  const actual = chart.bars[index];
  if (actual === undefined || actual.pickup !== wanted.pickup) return null;
  const write = (head: string) => rewritePlace(text, before(actual.place), `${head} `);
  if (!wanted.pickup && !sameMetre(actual.metre, wanted.metre)) {
    return write(`(${metreName(wanted.metre)})`);
  }
  const key = wanted.key ?? home;
  if (!sameKeys(actual.key ?? home, key)) return key === null ? null : write(typedKey(key));
  if (meant[index]?.rewritten !== true && ownSignature(actual) !== ownSignature(wanted)) {
    return rewritePlace(text, actual.place, wordsFor(wanted, settling));
  }
  if (sameNumbers(actual.ending, wanted.ending)) return null;
  if (wanted.ending === null) return doubled(text, chart.bars[index - 1]);
  let last = index;
  while (meant[last + 1]?.bar && sameNumbers(meant[last + 1]?.bar?.ending ?? null, wanted.ending)) last += 1;
  return doubled(text, chart.bars[last]);
}

/** The chords of a bar as the text has them elsewhere; else as they are drawn, with the text's accidental signs. */
function wordsFor(wanted: ChartBar, { text, chart }: Settling): string {
  const signature = ownSignature(wanted);
  for (const bar of chart.bars) {
    if (ownSignature(bar) !== signature || !sameMetre(bar.metre, wanted.metre) || isAgain(chart, bar))
      continue;
    const typed = textAt(text, bar.place);
    const means = sameKeys(bar.key, wanted.key) || isInSymbols(typed);
    if (means && !/^[/|]|%/.test(typed)) return typed;
  }
  const drawn = barText(wanted);
  return /[♭♯]/.test(text) ? drawn : drawn.replace(/♭/g, 'b').replace(/♯/g, '#');
}

/** Whether the words of a bar mean the same in every key, as numerals do not. */
const isInSymbols = (typed: string): boolean =>
  typed.split(/\s+/).every((word) => {
    const { chord } = splitSlashes(word);
    return chord === '' || parseChord(chord).ok;
  });

/** Closes an ending: a double bar line behind its last bar. Null where another sign stands there. */
function doubled(text: string, bar: ChartBar | undefined): string | null {
  if (bar === undefined) return null;
  const end = behind(bar.place);
  const line = text.split(/\r\n|\r|\n/)[end.line - 1] ?? '';
  const next = tokensOf(line).find(
    (token): token is BarLine => token.kind === 'bar line' && token.place.column >= end.column,
  );
  if (next === undefined) return rewritePlace(text, end, ' ||');
  if (next.double || next.closes) return null;
  return rewritePlace(text, { ...next.place, line: end.line }, next.opens ? '||:' : '||');
}

/** Whether a changed text has a problem that the text before had not, other than at some places. */
export function hasNewProblems(
  before: ParsedChart,
  after: ParsedChart,
  except: readonly ChartPlace[],
): boolean {
  const known = new Set(before.problems.map(({ message }) => message));
  const inside = (place: ChartPlace) =>
    except.some(
      ({ line, column, length }) =>
        place.line === line && place.column >= column && place.column + place.length <= column + length,
    );
  return after.problems.some((problem) => !known.has(problem.message) && !inside(problem));
}
