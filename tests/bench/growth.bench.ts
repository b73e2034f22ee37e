import { bench, describe } from 'vitest';
import { COMMON_TIME } from '../../src/core/base';
import { chartInLetters, parseChart, transposeChartText } from '../../src/core/chart';
import { splitSymbol, suggestKey } from '../../src/core/theory';
import { isActive } from '../../src/handout/active-drawing';
import { RUN_PIECES, runOf } from '../support/long-runs';

/** Ten times as long a run may take about ten times as long, and no more. */
const LENGTHS = [2_000, 20_000] as const;

const READERS: readonly { readonly what: string; readonly read: (text: string) => unknown }[] = [
  { what: 'a chart', read: (text) => parseChart(`C | ${text}!`, COMMON_TIME) },
  { what: 'a chart in German names', read: (text) => chartInLetters('german', `C | ${text}!`) },
  {
    what: 'a chart that is moved',
    read: (text) => transposeChartText(`C | ${text}!`, { steps: 1, halfSteps: 2 }),
  },
  { what: 'a key', read: (text) => suggestKey(`${text}!`) },
  { what: 'a chord symbol', read: (text) => splitSymbol(`C${text}!`) },
  { what: 'a drawing', read: (text) => isActive(`<${text}!`) },
];

describe.each(READERS)('the growth of reading $what', ({ read }) => {
  for (const piece of RUN_PIECES)
    for (const length of LENGTHS) {
      const text = runOf(piece, length);
      bench(`${JSON.stringify(piece)}, ${length} characters`, () => void read(text), {
        time: 40,
        warmupTime: 10,
      });
    }
});
