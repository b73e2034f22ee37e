import {
  barTicks,
  beatsInBar,
  beatsOf,
  isCompound,
  isDotted,
  type Metre,
  type MetreBeat,
  TICKS_PER_QUARTER,
  unitTicks,
} from '../../base';
import { syllablePlace } from '../../notation';
import { SILENCE_SIGN } from './columns';
import type { TabBar } from './systems';

/** A word of a row, and the column at which it begins. */
export interface RowWord {
  readonly column: number;
  readonly text: string;
}

export const wordsOf = (row: string): readonly RowWord[] =>
  [...row.matchAll(/\S+/gu)].map(({ 0: text, index }) => ({ column: index, text }));

/** A moment that the counting names. */
export interface CountedMoment {
  readonly column: number;
  /** Ticks from the beginning of the bar. */
  readonly tick: number;
  readonly silence: boolean;
}

/** Other ways to write what is counted (common practice, no source). */
const SAME: Readonly<Record<string, string>> = { '+': '&', n: '&', and: '&', ah: 'a', u: '&' };
const COUNTED = /^-?(?:\d{1,2}|[&+.eanu]|and|ah|trip|let)?$/u;

const plainCount = (text: string): string => SAME[text] ?? text;

/** Whether a row is a counting: numbers that begin with one, perhaps after those of a pickup, syllables between them. */
export function isCounting(row: string): boolean {
  const words = wordsOf(row).map(({ text }) => text.replace(SILENCE_SIGN, ''));
  if (words.length < 2 || !words.every((word) => COUNTED.test(word))) return false;
  return words[0] === '1' || words[0] === '.' || (words.includes('1') && isInTurn(words));
}

/** Whether beats follow each other, up to the one of the next bar: fingers under the strings do not. */
function isInTurn(words: readonly string[]): boolean {
  let beat: number | null = null;
  for (const word of words) {
    const next: number | null = beat === null ? null : beat + 1;
    if (/^\d/u.test(word)) {
      beat = Number(word);
      if (next !== null && beat !== next && beat !== 1) return false;
    } else if (word === '.') beat = next;
  }
  return true;
}

/** The highest number that is counted in a row. */
export const mostCounted = (row: string): number =>
  Math.max(0, ...wordsOf(row).map(({ text }) => Number(/^-?(\d{1,2})$/u.exec(text)?.[1] ?? 0)));

/** The beats that are counted in a bar: who counts six in 6/8 counts eighths. */
function countedBeats(metre: Metre, highest: number): readonly MetreBeat[] {
  if (!isCompound(metre) || highest <= beatsInBar(metre)) return beatsOf(metre);
  const unit = Number(unitTicks(metre));
  return Array.from({ length: metre.count }, (_, index) => ({ index, start: index * unit, length: unit }));
}

/**
 * How long the upbeat is that a bar's counting tells, in ticks: the rest of a bar from what is counted first, which is
 * a number or a syllable of the beat before the next one. 0 where it begins with one.
 */
export function countedUpbeat(row: string, { from, until }: TabBar, metre: Metre): number {
  const words = wordsOf(row)
    .filter(({ column }) => column >= from - 1 && column < until)
    .map(({ text }) => plainCount(text.replace(SILENCE_SIGN, '')));
  const [first = '1'] = words;
  if (first === '1' || first === '.' || first === '') return 0;
  const numbers = words.filter((word) => /^\d/u.test(word)).map(Number);
  const beats = countedBeats(metre, Math.max(0, ...numbers));
  const number = numbers[0] ?? beats.length + 1;
  const beat = beats[/^\d/u.test(first) ? number - 1 : number - 2];
  const place = /^\d/u.test(first) ? 0 : beat && syllablePlace(first, isDotted(beat));
  return beat === undefined || place == null ? 0 : barTicks(metre) - (beat.start + place * beat.length);
}

/**
 * The counted moments of a bar; `before` is how many beats of it were counted in an earlier line.
 * @param whole - the metre of a whole bar, of which a pickup has the end: whoever counts it so begins with another
 * number than one
 */
export function momentsOf(
  row: string,
  { from, until }: TabBar,
  metre: Metre,
  before = 0,
  whole: Metre = metre,
): { readonly moments: readonly CountedMoment[]; readonly beats: number } {
  const words = wordsOf(row).filter(({ column }) => column >= from - 1 && column < until);
  const highest = Math.max(0, ...words.map(({ text }) => Number(/\d{1,2}/u.exec(text)?.[0] ?? 0)));
  const isOne = /^-?[1.]$/u.test(words[0]?.text ?? '.');
  const missing = isOne ? 0 : Math.max(0, barTicks(whole) - barTicks(metre));
  const all = countedBeats(missing > 0 ? whole : metre, highest);
  const beats = all.map((beat) => ({ ...beat, start: beat.start - missing }));
  const first = beats.findIndex((beat) => beat.start + beat.length > 0);
  let at = before + first - ((beats[first]?.start ?? 0) < 0 ? 0 : 1);
  /** Its tick; null for a moment without a word, undefined for what is not counted. */
  const tickOf = (said: string): number | null | undefined => {
    if (said === '') return null;
    if (said === '.') at += 1;
    else if (/^\d/u.test(said)) at = Number(said) - 1;
    const beat = beats[at];
    if (beat === undefined) return undefined;
    if (said === '.' || /^\d/u.test(said)) return beat.start;
    const place = syllablePlace(said, isDotted(beat));
    return place === null ? undefined : Math.round(beat.start + place * beat.length);
  };
  const moments = words.flatMap(({ column, text }): readonly UnplacedMoment[] => {
    const silence = text.startsWith(SILENCE_SIGN);
    const tick = tickOf(plainCount(silence ? text.slice(1) : text));
    return tick === undefined ? [] : [{ column, tick, silence }];
  });
  return { moments: placed(moments, from, until, barTicks(metre)), beats: at + 1 };
}

/** A moment that is marked without a word has no tick yet. */
interface UnplacedMoment extends Omit<CountedMoment, 'tick'> {
  readonly tick: number | null;
}

/** The finest places that a counting leaves to be told from the columns. */
const FINE = TICKS_PER_QUARTER / 8;

/** Moments without a word lie between those around them. */
function placed(
  moments: readonly UnplacedMoment[],
  from: number,
  until: number,
  length: number,
): readonly CountedMoment[] {
  const known = moments.flatMap(({ tick, ...moment }) => (tick === null ? [] : [{ ...moment, tick }]));
  return moments.map(({ tick, ...moment }) => ({
    ...moment,
    tick: tick ?? tickAt(moment.column, known, from, until, length),
  }));
}

/**
 * The tick of a column: that of the counted moment there, else between the moments on both sides of it.
 * @param fine - ticks of the grid that is taken then
 */
export function tickAt(
  column: number,
  moments: readonly CountedMoment[],
  from: number,
  until: number,
  length: number,
  fine = FINE,
): number {
  const there = moments.find((moment) => moment.column === column);
  if (there) return there.tick;
  const before = moments.findLast((moment) => moment.column < column) ?? { column: from, tick: 0 };
  const after = moments.find((moment) => moment.column > column) ?? { column: until, tick: length };
  const share = (column - before.column) / Math.max(1, after.column - before.column);
  const near = Math.round((before.tick + share * (after.tick - before.tick)) / fine) * fine;
  return Math.max(before.tick, Math.min(after.tick, near));
}

/** The ticks of columns, each of its own: on a finer grid where two would fall together. */
export function ticksAt(
  columns: readonly number[],
  moments: readonly CountedMoment[],
  { from, until }: TabBar,
  length: number,
): readonly number[] {
  for (const fine of [FINE, FINE / 2, FINE / 4]) {
    const places = columns.map((column) => tickAt(column, moments, from, until, length, fine));
    if (new Set(places).size === places.length) return places;
  }
  return columns.map((column) => tickAt(column, moments, from, until, length, 1));
}

/** How far from its step a note may stand, in steps, for an even grid to hold. */
const CLOSE = 0.3;

/**
 * The ticks of the columns of a bar whose tab is spaced evenly: the coarsest grid on which each note has a step of its
 * own near to where it stands; where there is none, the notes follow each other evenly.
 * @param lead - columns between the bar line and the bar's first step
 */
export function evenTicks(
  columns: readonly number[],
  bar: TabBar,
  metre: Metre,
  lead: number,
): readonly number[] {
  const length = barTicks(metre);
  const width = evenWidth(bar.until - bar.from - lead, beatsInBar(metre));
  const places = columns.map((column) => Math.max(0, (column - bar.from - lead) / width));
  const eighths = length / (TICKS_PER_QUARTER / 2);
  const grids = isCompound(metre)
    ? [eighths, eighths * 2]
    : [eighths, eighths * 2, beatsInBar(metre) * 3, eighths * 4];
  for (const grid of grids) {
    const steps = places.map((place) => Math.min(grid - 1, Math.round(place * grid)));
    const near = places.every((place, index) => Math.abs(place * grid - (steps[index] ?? 0)) <= CLOSE);
    if (near && new Set(steps).size === steps.length) return steps.map((step) => (step * length) / grid);
  }
  const steps = Math.max(eighths, 2 ** Math.ceil(Math.log2(Math.max(1, columns.length))));
  return columns.map((_, index) => (Math.floor((index * steps) / columns.length) * length) / steps);
}

/** The columns of a bar that are its steps: a dash or two before the bar line belong to none, where it comes out even so. */
function evenWidth(width: number, beats: number): number {
  for (const spare of [0, 1, 2]) if (width - spare > 0 && (width - spare) % beats === 0) return width - spare;
  return Math.max(1, width);
}
