import { bench, describe } from 'vitest';
import { COMMON_TIME } from '../../src/core/base';
import { chartInLetters, parseChart, transposeChartText } from '../../src/core/chart';
import { deriveSheet, newLesson, setChartText } from '../../src/core/lesson';
import { splitSymbol, suggestKey } from '../../src/core/theory';
import { isActive } from '../../src/handout/active-drawing';
import { engrave } from '../../src/score/engrave';
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

/** A sheet of so many sections of one bar each, derived and engraved from nothing. */
function throughSections(count: number, turn: number): void {
  const lesson = newLesson('sections', 'Sections');
  const chart = Array.from({ length: count }, (_, index) => `S${index}:\n| ${'CFGA'[(index + turn) % 4]} |`);
  const typed = setChartText(lesson, lesson.pieces[0]?.id ?? '', chart.join('\n'));
  const [piece] = typed.pieces;
  if (piece === undefined) throw new Error('no piece');
  const options = { degrees: true, fingers: true, counting: false, barsPerSystem: 4, measureNumbers: true };
  // Another width each time, or the systems would be known from the time before.
  engrave(deriveSheet(piece, typed.instrument, undefined), { ...options, width: 900 + turn });
}

describe('the growth of the sheet with its sections', () => {
  let turn = 0;
  for (const count of [100, 200, 400, 800])
    bench(
      `${count} sections`,
      () => {
        turn += 1;
        throughSections(count, turn);
      },
      { iterations: 5, warmupIterations: 1, time: 0, warmupTime: 0 },
    );
});
