import { bench, describe } from 'vitest';
import { COMMON_TIME } from '../../src/core/base';
import { chartInLetters, parseChart, transposeChartText } from '../../src/core/chart';
import { deriveSheet, newLesson, setChartText } from '../../src/core/lesson';
import { splitSymbol, suggestKey } from '../../src/core/theory';
import { isActive } from '../../src/handout/active-drawing';
import { engrave } from '../../src/score/engrave';
import { RUN_PIECES, runOf } from '../support/long-runs';
import { tellFigure, workOf } from './told';
import { FEW } from './within';

/**
 * Ten times as long a run takes about ten times as long where the reading keeps in proportion, and a hundred times where
 * it goes back for every sign. Twice the proportion leaves room for what a processor keeps at hand of the shorter run.
 */
const [SHORT, LONG] = [2_000, 20_000] as const;
const GROWTH = { most: 20 };
const ROUNDS = 5;

/** So long are the shorter runs read in one round, in the processor's milliseconds, that its clock can tell them. */
const ROUND_MS = 4;

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

/** How many times as long the longer run of a piece takes, in each round. */
function growthOf(read: (text: string) => unknown, piece: string): readonly number[] {
  const [short, long] = [runOf(piece, SHORT), runOf(piece, LONG)];
  // A first reading of each, so that the code is warm.
  for (const text of [short, long]) read(text);
  const [once = 0] = workOf(1, () => void read(short));
  const times = Math.max(1, Math.ceil(ROUND_MS / once));
  return Array.from({ length: ROUNDS }, () => {
    const [all = 0] = workOf(1, () => {
      for (let time = 0; time < times; time += 1) read(short);
    });
    const [one = 0] = workOf(1, () => void read(long));
    return (one * times) / all;
  });
}

const medianOf = (rounds: readonly number[]): number =>
  rounds.toSorted((one, other) => one - other)[rounds.length >> 1] ?? 0;

/** Tells the growth of the piece that grows most. */
function tellGrowth(what: string, read: (text: string) => unknown): void {
  const [[piece, rounds] = ['', []]] = RUN_PIECES.map((each) => [each, growthOf(read, each)] as const).sort(
    ([, one], [, other]) => medianOf(other) - medianOf(one),
  );
  const told = `Reading ${what}, ten times as much of ${JSON.stringify(piece)}, of ${RUN_PIECES.length} runs the worst`;
  tellFigure(told, 'times as long', GROWTH, rounds);
}

describe.each(READERS)('the growth of reading $what', ({ what, read }) => {
  tellGrowth(what, read);
  for (const length of [SHORT, LONG]) {
    const texts = RUN_PIECES.map((piece) => runOf(piece, length));
    bench(`every run, ${length} characters each`, () => {
      for (const text of texts) read(text);
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
  const next = (count: number) => (): void => {
    turn += 1;
    throughSections(count, turn);
  };
  const few = medianOf(workOf(ROUNDS, next(100)));
  const many = workOf(ROUNDS, next(800)).map((each) => each / few);
  tellFigure('The sheet of eight times as many sections', 'times as long', { most: 16 }, many);
  for (const count of [100, 200, 400, 800]) bench(`${count} sections`, next(count), FEW);
});
