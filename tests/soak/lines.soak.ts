import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LINE_PROPERTIES, rulesBrokenUnasked } from '../line/line-properties';
import { wideWishes } from '../line/wide-charts';
import { minutesOf, tell } from './minutes';

/** Shared among the properties, each with another seed every time; a failure prints the seed and the smallest chart. */
const MINUTES = minutesOf('SOAK_LINES_MINUTES', 20);
const PROPERTIES = [
  ...Object.entries(LINE_PROPERTIES),
  ['breaks no rule', (wish) => expect(rulesBrokenUnasked(wish)).toBe(0)],
] as const satisfies readonly (readonly [string, (typeof LINE_PROPERTIES)[string]])[];

describe('any chart, for minutes', () => {
  test.each(PROPERTIES)('%s', (name, holds) => {
    let lines = 0;
    const counted = fc.property(wideWishes, (wish) => {
      lines += 1;
      holds(wish);
    });
    try {
      fc.assert(counted, {
        numRuns: Number.MAX_SAFE_INTEGER,
        interruptAfterTimeLimit: (MINUTES * 60_000) / PROPERTIES.length,
        markInterruptAsFailure: false,
      });
    } finally {
      tell(`${name}: ${lines} lines`);
    }
  });
});
