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

/**
 * Bars by their names: `bars 1–3 and 5`, `the pickup`, `every second bar from bar 1 to bar 15`; `every bar` only where it is
 * every bar of the chart.
 */
export function barsText({ model }: Pick<AnalysedLine, 'model'>, bars: readonly number[]): string {
  const all = model.bars.filter(({ index }) => model.request.chart.bars[index]?.pickup !== true);
  if (bars.length > 1 && all.every(({ index }) => bars.includes(index)))
    return bars.length > all.length ? `the pickup and ${EVERY_BAR}` : EVERY_BAR;
  const numbers = [...new Set(bars.map((bar) => model.request.chart.bars[bar]?.number ?? bar + 1))];
  const runs: { from: number; to: number }[] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run && number === run.to + 1 && number > 1) run.to = number;
    else runs.push({ from: number, to: number });
  }
  const pickup = runs[0]?.from === 0 ? ['the pickup'] : [];
  const counted = runs.filter(({ from }) => from > 0);
  const byDistance = regularly(counted);
  if (byDistance !== null) return listed([...pickup, byDistance]);
  const texts = counted.flatMap(({ from, to }) =>
    to === from ? [`${from}`] : to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`],
  );
  const several = numbers.length - pickup.length > 1;
  const named = texts.length === 0 ? [] : [`${several ? 'bars' : 'bar'} ${listed(texts)}`];
  return listed([...pickup, ...named]);
}

/** A verb that agrees with bars by their names: one bar, the pickup, or every so many of them is one. */
export const agreeing = (bars: string, one: string, several: string): string =>
  /^(every|bar )|^the pickup$/.test(bars) ? one : several;
