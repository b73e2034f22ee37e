import { availableParallelism, loadavg } from 'node:os';
import { processorTime } from './processor-time';

/** What a figure is held against: it is to be that much at most, or at least. */
export interface Budget {
  readonly most?: number;
  readonly least?: number;
}

const plain = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/**
 * Tells a figure of a benchmark in the one form that all of them have: its budget, the least and the median of its
 * rounds, and how laden the machine was, because a clock lies under load.
 * @param unit - of all three figures, such as `ms` or `times real time`
 */
export function tellFigure(
  what: string,
  unit: string,
  { most, least }: Budget,
  rounds: readonly number[],
): void {
  const sorted = [...rounds].sort((one, other) => one - other);
  const [lowest = Number.NaN] = sorted;
  const median = sorted[sorted.length >> 1] ?? Number.NaN;
  const budget = most === undefined ? `at least ${least ?? 0}` : `at most ${most}`;
  const load = loadavg()[0]?.toFixed(1);
  process.stdout.write(
    `${what}: budget ${budget}, least ${plain(lowest)}, median ${plain(median)} ${unit} ` +
      `(${rounds.length} rounds, load ${load} on ${availableParallelism()} cores)\n`,
  );
}

/**
 * Begins to count the processor's milliseconds that some work takes: what others do beside it counts for little. Where
 * the clock says less than the processor, other threads worked too, and the clock counts.
 * @returns tells them when the work is done
 */
export function beginWork(): () => number {
  const begin = performance.now();
  const before = processorTime();
  return () => Math.min(processorTime() - before, performance.now() - begin);
}

/** The work of each round, in the processor's milliseconds. */
export function workOf(rounds: number, work: () => void): readonly number[] {
  return Array.from({ length: rounds }, () => {
    const worked = beginWork();
    work();
    return worked();
  });
}
