import { listed } from '../base';
import type { AnalysedLine } from './line-claims';

const EVERY_BAR = 'every bar';

interface Run {
  readonly from: number;
  readonly to: number;
}

/** More single bars than this are told by their distance, where that is always the same. */
const MOST_SINGLE = 3;

const DISTANCES: Readonly<Record<number, string>> = { 2: 'second', 3: 'third', 4: 'fourth', 8: 'eighth' };

/** `every second bar from bar 1 to bar 15`; null where the bars do not come so regularly. */
function regularly(runs: readonly Run[]): string | null {
  const [first, second] = runs;
  const last = runs.at(-1);
  if (first === undefined || second === undefined || last === undefined || runs.length <= MOST_SINGLE)
    return null;
  const distance = second.from - first.from;
  const name = DISTANCES[distance];
  const regular = runs.every(({ from, to }, index) => from === to && from === first.from + index * distance);
  return regular && name !== undefined ? `every ${name} bar from bar ${first.from} to bar ${last.to}` : null;
}

/** Bars that follow each other, from the first to the last. */
function runsOf(numbers: readonly number[]): readonly Run[] {
  const runs: { from: number; to: number }[] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run && number === run.to + 1 && number > 1) run.to = number;
    else runs.push({ from: number, to: number });
  }
  return runs;
}

/** From so many on, single numbers are no longer read. */
const MANY = 4;

/** The longest stretch from the beginning that comes regularly, and what comes after it. */
function splitRegular(runs: readonly Run[]): readonly [told: string, rest: readonly Run[]] | null {
  for (let length = runs.length; length > MOST_SINGLE; length -= 1) {
    const told = regularly(runs.slice(0, length));
    if (told !== null) return [told, runs.slice(length)];
  }
  return null;
}

/** Regular stretches by their distance, the rest by their numbers. */
function bySegments(runs: readonly Run[]): readonly string[] {
  const split = splitRegular(runs);
  if (split !== null) return [split[0], ...bySegments(split[1])];
  const next = runs.findIndex((_, index) => index > 0 && splitRegular(runs.slice(index)) !== null);
  if (next < 0) return runs.length === 0 ? [] : [byNumbers(runs)];
  return [byNumbers(runs.slice(0, next)), ...bySegments(runs.slice(next))];
}

function byNumbers(runs: readonly Run[]): string {
  const texts = runs.flatMap(({ from, to }) =>
    to === from ? [`${from}`] : to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`],
  );
  return `${texts.length > 1 || texts[0]?.includes('–') ? 'bars' : 'bar'} ${listed(texts)}`;
}

/** All bars but a few, where that is shorter; null where it is not. */
function allBut(numbers: readonly number[], all: readonly number[], runs: readonly Run[]): string | null {
  if (runs.length < MANY) return null;
  const others = runsOf(all.filter((number) => !numbers.includes(number)));
  const regular = regularly(others);
  if (regular !== null) return `${EVERY_BAR} but ${regular}`;
  return others.length <= 2 ? `${EVERY_BAR} but ${byNumbers(others)}` : null;
}

/**
 * Bars by their names: `bars 1–3 and 5`, `the pickup`, `every second bar from bar 1 to bar 15`, `every bar but bar 5`;
 * `every bar` alone only where it is every bar of the chart.
 */
export function barsText({ model }: Pick<AnalysedLine, 'model'>, bars: readonly number[]): string {
  const chartBars = model.request.chart.bars;
  const all = model.bars.filter(({ index }) => chartBars[index]?.pickup !== true);
  if (bars.length > 1 && all.every(({ index }) => bars.includes(index)))
    return bars.length > all.length ? `the pickup and ${EVERY_BAR}` : EVERY_BAR;
  const numberOf = (bar: number) => chartBars[bar]?.number ?? bar + 1;
  const numbers = [...new Set(bars.map(numberOf))];
  const pickup = numbers[0] === 0 ? ['the pickup'] : [];
  const runs = runsOf(numbers.filter((number) => number > 0));
  const byDistance = regularly(runs);
  if (byDistance !== null) return listed([...pickup, byDistance]);
  const but =
    pickup.length > 0 ? null : allBut(numbers, [...new Set(all.map(({ index }) => numberOf(index)))], runs);
  if (but !== null) return but;
  const named = runs.length > MANY ? bySegments(runs) : runs.length > 0 ? [byNumbers(runs)] : [];
  return listed([...pickup, ...named]);
}

/** Names of bars that stand for one thing: what is left out of them may be a list, and they may not. */
const AS_ONE = /^(the pickup|bar \d+|every bar( but .+)?|every \w+ bar from bar \d+ to bar \d+)$/;

/** A verb that agrees with bars by their names: one bar, the pickup, or every so many of them is one. */
export const agreeing = (bars: string, one: string, several: string): string =>
  AS_ONE.test(bars) ? one : several;
