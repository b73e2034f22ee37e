import { type BenchOptions, bench } from 'vitest';
import { type Budget, beginWork, tellFigure } from './told';

/**
 * How long an answer may take: a tenth of a second is felt as at once, and within a second the thought is not lost
 * (Nielsen, “Usability Engineering”, 1993, chapter 5; from memory).
 */
export const AT_ONCE: Budget = { most: 100 };
export const UNBROKEN: Budget = { most: 1000 };

/** What is done at every press of a key: a frame at 60 Hz, in milliseconds. */
export const A_FRAME: Budget = { most: 16 };

/** A few rounds of what takes long, after one that warms up. */
export const FEW: BenchOptions = { iterations: 5, warmupIterations: 1, time: 0, warmupTime: 0 };

/**
 * A benchmark that tells the milliseconds of its rounds against a budget.
 * @param what - says it in full; its row in the table is called `name`
 * @param work - answers with its milliseconds where a page has measured them; else the processor's time is counted
 */
export function benchWithin(
  { what, name, budget }: { readonly what: string; readonly name: string; readonly budget: Budget },
  work: () => unknown,
  options: BenchOptions = {},
): void {
  let rounds: number[] = [];
  // Async, or it is called once more, only to see whether it answers with a promise.
  const round = async (): Promise<void> => {
    const worked = beginWork();
    const told = await work();
    rounds.push(typeof told === 'number' ? told : worked());
  };
  bench(name, round, {
    ...options,
    // It is run to warm up first, and then to be measured.
    setup: () => {
      rounds = [];
    },
    teardown: (_, mode) => {
      if (mode === 'run') tellFigure(what, 'ms', budget, rounds);
    },
  });
}
