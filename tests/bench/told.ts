import { availableParallelism, loadavg } from 'node:os';

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
 * The processor's milliseconds that some work takes, one figure a round: what others do beside it counts for little.
 * Where the clock says less than the processor, other threads worked too, and the clock counts.
 */
export function workOf(rounds: number, work: () => void): readonly number[] {
  return Array.from({ length: rounds }, () => {
    const begin = performance.now();
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return Math.min((user + system) / 1000, performance.now() - begin);
  });
}
