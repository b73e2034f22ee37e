import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BarEdit,
  barSignature,
  type ChartProblem,
  chartInLetters,
  chordFunctions,
  editBar,
  findChartKeys,
  matchBars,
  parseChart,
  playOrder,
  printChart,
  transposeChartText,
  typedChartIn,
  typedProblem,
} from '../../src/core/chart';
import { NAMINGS } from '../../src/core/theory';
import { longRuns, RUN_PIECES, runOf } from '../support/long-runs';
import { key } from '../theory/read';
import { metre } from './read';

/*
 * Everything a text box can hold. `HOSTILE_RUNS` asks for a longer run than the test command's, `HOSTILE_SEED`
 * for another one; both are printed, so that a run can be had again.
 */
const RUNS = Number(process.env.HOSTILE_RUNS ?? 300);
const SEED = Number(process.env.HOSTILE_SEED ?? 5);
const HOME = key('F');

const CHARTS = [
  'Verse:\n| Am | F  C | G / / E7 | % |\nChorus:\n|: C | G :| x3\nVerse\n',
  '(1) G7 |: C | Dm7 G7 |1. Em A7 | Dm7 G7 :|2. F Fm | C ||\n(3/4) F | C\n(key: Bb) Bb | Eb ; the end',
  'I vi | IV V7 | 1 6- | 4 5/7\n(6/8) F#m7b5 | B7(b9,#11) | N.C. |',
];
const SCRAPS = [
  '|',
  '|:',
  ':|',
  '||',
  '%',
  '/',
  ';',
  ':',
  '(',
  ')',
  'x3',
  '1.',
  '2.',
  '(3/4)',
  '\n',
  'C',
  '♭',
  '<b>',
  '\u0000',
  '𝄫',
  '9',
  ' ',
];

/** A real chart with pieces cut out, doubled, moved or thrown in. */
const mutated = fc
  .tuple(
    fc.constantFrom(...CHARTS),
    fc.array(
      fc.tuple(
        fc.nat(),
        fc.nat({ max: 12 }),
        fc.constantFrom('cut', 'double', 'throw in'),
        fc.oneof(
          { weight: 9, arbitrary: fc.constantFrom(...SCRAPS) },
          { weight: 1, arbitrary: longRuns(80) },
        ),
      ),
      {
        minLength: 1,
        maxLength: 12,
      },
    ),
  )
  .map(([text, changes]) =>
    changes.reduce((changed, [where, length, what, scrap]) => {
      const at = where % (changed.length + 1);
      const piece =
        what === 'cut' ? '' : what === 'double' ? changed.slice(at, at + length).repeat(2) : scrap;
      return changed.slice(0, at) + piece + changed.slice(what === 'throw in' ? at : at + length);
    }, text),
  );
const random = fc.oneof(
  fc.string({ maxLength: 120 }),
  fc.string({ unit: 'binary', maxLength: 120 }),
  fc.array(fc.constantFrom(...SCRAPS), { maxLength: 80 }).map((scraps) => scraps.join('')),
  longRuns(400),
);

/** Whether each problem stands in the text and says something. */
function checkPlaces(text: string, problems: readonly ChartProblem[]): void {
  const lines = text.split(/\r\n|\r|\n/);
  for (const problem of problems) {
    const line = lines[problem.line - 1];
    const end = problem.column - 1 + problem.length;
    if (
      line === undefined ||
      problem.column < 1 ||
      problem.length < 1 ||
      end > line.length ||
      problem.message === ''
    ) {
      throw new Error(`A problem without a place: ${JSON.stringify(problem)}`);
    }
  }
}

/** The text as it is typed and stored in every naming of the notes. */
function typeInAllNames(text: string): void {
  for (const naming of NAMINGS) {
    const stored = chartInLetters(naming, text);
    const { problems } = parseChart(stored, metre(), HOME);
    checkPlaces(
      text,
      problems.map((problem) => typedProblem(naming, stored, text, problem)),
    );
    typedChartIn(naming, text);
  }
}

/** A bar in the middle, changed in every way. */
function editABar(text: string, bars: number): void {
  const bar = bars >> 1;
  const edits: readonly BarEdit[] = [
    { kind: 'write', bar, text: 'F#m7 B7' },
    { kind: 'insert', bar, text: '%' },
    { kind: 'append', bar, text: 'C / Am /', sameEnding: true },
    { kind: 'remove', bar },
  ];
  for (const edit of edits) {
    const edited = editBar(text, metre(), edit, HOME);
    if (edited && edited.origins.length !== parseChart(edited.text, metre(), HOME).chart.bars.length)
      throw new Error(`Bars that come from nowhere: ${JSON.stringify(edited)}`);
  }
}

/** Everything the program does with a chart text; gives the number of its problems. */
function useAll(text: string): number {
  const { chart, problems } = parseChart(text, metre(), HOME);
  checkPlaces(text, problems);
  typeInAllNames(text);
  editABar(text, chart.bars.length);
  playOrder(chart);
  printChart(chart);
  transposeChartText(text, { steps: 1, halfSteps: 2 });
  chordFunctions(chart, HOME, findChartKeys(chart).sections);
  const signatures = chart.bars.map(barSignature);
  matchBars(signatures, [...signatures].reverse());
  return problems.length;
}

describe('hostile chart texts', () => {
  it(`${RUNS} random and mutated charts, seed ${SEED}`, { timeout: 60_000 + RUNS * 40 }, () => {
    let worst = 0;
    fc.assert(
      fc.property(fc.oneof(random, mutated), (text) => {
        const before = process.cpuUsage();
        useAll(text);
        const { user, system } = process.cpuUsage(before);
        worst = Math.max(worst, (user + system) / 1000);
      }),
      { seed: SEED, numRuns: RUNS },
    );
    process.stdout.write(
      `Hostile charts: ${RUNS} runs, seed ${SEED}, slowest ${worst.toFixed(0)} ms of processor time.\n`,
    );
  });

  it.each([
    '(',
    ')',
    '|',
    '||',
    '|:',
    ':|',
    '| |',
    '%',
    '%|',
    '/',
    'C/',
    'C|',
    '1.',
    '1.C|',
    'x3',
    ':|x3',
    ';',
    'A:\n',
    'A:\nC\nA\n',
    '(2)',
    '(3/4)',
    'b',
    'C(',
    '\n',
    '\u0000',
    'C7(b9)',
    ' ',
    '9,',
  ])('fifty thousand characters of %j', { timeout: 20_000 }, (piece) => {
    const text = piece.repeat(Math.ceil(50_000 / piece.length));
    const { problems } = parseChart(text, metre(), HOME);
    expect(problems.length).toBeLessThanOrEqual(200);
    transposeChartText(text, { steps: 1, halfSteps: 2 });
  });

  it.each(RUN_PIECES)('a run of %j before a sign that breaks it', { timeout: 20_000 }, (piece) => {
    for (const before of ['C | ', '(', 'C7(', '(key: ']) {
      const text = runOf(piece, 6_000, before, '!');
      const { problems } = parseChart(text, metre());
      expect(problems.length).toBeLessThanOrEqual(200);
      typeInAllNames(text);
    }
  });
});
