import { describe } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { sheetOf } from '../support/score-sheets';
import { SCORE_OPTIONS } from './score-options';
import { A_FRAME, AT_ONCE, benchWithin } from './within';

const FOUR =
  'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1';

const lineOf = (bars: number, last = FOUR) =>
  sheetOf({
    key: 'F',
    chart: Array(bars / 4)
      .fill('| F | Dm | Gm | C7 |')
      .join('\n'),
    notes: [...Array(bars / 4 - 1).fill(FOUR), last].join(' | '),
  });

describe('layout of the score at a new width', () => {
  for (const bars of [8, 32, 128]) {
    const sheet = lineOf(bars);
    let width = 700;
    const what = `The score of ${bars} bars laid out at a new width`;
    benchWithin({ what, name: `${bars} bars`, budget: AT_ONCE }, () => {
      // A width that was never asked for before: nothing is remembered but the signs themselves.
      width = width >= 1300 ? 700.01 : width + 0.37;
      engrave(sheet, { ...SCORE_OPTIONS, width });
    });
  }
});

describe('layout of the score after one bar changed', () => {
  for (const bars of [8, 32, 128]) {
    const sheets = [lineOf(bars), lineOf(bars, FOUR.replace('E1/1', 'G1/1'))];
    let turn = 0;
    const what = `The score of ${bars} bars laid out after one bar changed`;
    benchWithin({ what, name: `${bars} bars`, budget: A_FRAME }, () => {
      turn = 1 - turn;
      const sheet = sheets[turn];
      if (sheet) engrave(sheet, SCORE_OPTIONS);
    });
  }
});
