import { describe, expect, test } from 'vitest';
import { checkLine } from '../../src/core/line';
import { line, request, type Wish } from './notation';

const rulesOf = (chart: string, notes: string, wish: Wish = {}) => [
  ...new Set(
    checkLine(request(chart, { feel: 'early-ska', ...wish }), line(notes)).map((breach) => breach.rule),
  ),
];

/** For each rule a line that breaks it alone or among others, and the same line mended. */
const CASES: readonly {
  readonly rule: number;
  readonly chart: string;
  readonly broken: string;
  readonly mended: string;
  readonly wish?: Wish;
}[] = [
  {
    rule: 1,
    chart: '| C | F |',
    broken: 'C2 . E2 . A2 . E2 . | F2 . C2 . A1 . G1 .',
    mended: 'C2 . E2 . G2 . E2 . | F2 . C2 . A1 . C2 .',
    wish: { key: 'C' },
  },
  {
    rule: 2,
    chart: '| C | F |',
    broken: 'C2 . E2 . F2 . E2 . | F2 . C2 . A1 . C2 .',
    mended: 'C2 . E2 . G2 . E2 . | F2 . C2 . A1 . C2 .',
  },
  {
    rule: 3,
    chart: '| Am | E7 |',
    broken: 'A1 . C2 . E2 . A1 . | E1 . G1 . E1 . G♯1 .',
    mended: 'A1 . C2 . E2 . C2 . | E1 . B1 . E1 . G♯1 .',
    wish: { key: 'Am' },
  },
  {
    rule: 3,
    chart: '| Am | E7 |',
    broken: 'A1 . C2 . E2 . C2 . | E1 . F1 . G♯1 . G♯1 .',
    mended: 'A1 . C2 . E2 . C2 . | E1 . B1 . G♯1 . G♯1 .',
    wish: { key: 'Am' },
  },
  {
    rule: 4,
    chart: '| G7 | C |',
    broken: 'G1 . B1 . D2 . F2 . | C2 . G1 . E2 . D2 .',
    mended: 'G1 . B1 . F2 . E2 . | C2 . E2 . G2 . E2 .',
    wish: { key: 'C' },
  },
  {
    rule: 4,
    chart: '| G7 | C |',
    broken: 'G1 . D2 . G1 . B1 . | E2 . C2 . G2 . E2 .',
    mended: 'G1 . D2 . G1 . B1 . | C2 . E2 . G2 . E2 .',
    wish: { key: 'C' },
  },
  {
    rule: 5,
    chart: '| F | B♭ |',
    broken: 'F1 . A1 . C2 . E2 . | B♭1 . D2 . F2 . D2 .',
    mended: 'F1 . A1 . C2 . A1 . | B♭1 . D2 . F2 . D2 .',
  },
  {
    rule: 6,
    chart: '| C | G |',
    broken: 'C2 . E2 . C2 . G1 . | G1 . B1 . D2 . B1 .',
    mended: 'C2 . E2 . C2 . C2 . | G1 . B1 . D2 . B1 .',
    wish: { key: 'C' },
  },
  {
    rule: 7,
    chart: '| C | F |',
    broken: 'C2 . G2 . C2 D2 E2 . | F1 . A1 . C2 . A1 .',
    mended: 'C2 . G2 . C2 D2 E2 . | F2 . C2 . A1 . C2 .',
  },
  {
    rule: 8,
    chart: '| F | F |',
    broken: 'F1 . C2 . F2 . A2 . | F2 . C2 . A1 . C2 .',
    mended: 'F1 . C2 . F2 . C2 . | A1 . C2 . F2 . C2 .',
  },
  {
    rule: 9,
    chart: '| C | F |',
    broken: '- - C2 . E2 . C2 . | F1 . A1 . C2 . A1 .',
    mended: 'C2 . E2 . G2 . E2 . | - - F1 . A1 . G1 .',
    wish: { key: 'F' },
  },
  {
    rule: 9,
    chart: '| C | F | C | F |',
    broken: 'C2 . E2 . C2 . E2 . | - - F1 . A1 . F1 . | - - C2 . E2 . C2 . | F1 . A1 . C2 . A1 .',
    mended: 'C2 . E2 . C2 . E2 . | - - F1 . A1 . F1 . | C2 . E2 . C2 . E2 . | F1 . A1 . C2 . A1 .',
  },
  {
    rule: 10,
    chart: '| C | C |',
    broken: 'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . A2 .',
    mended: 'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
  },
  {
    rule: 11,
    chart: '| C | F | C | F |',
    broken: 'G1 . C2 . E2 . C2 . | C2 . F2 . A2 . F2 . | G1 . C2 . E2 . C2 . | F1 . A1 . C2 . A1 .',
    mended: 'C2 . G1 . C2 . E2 . | F2 . C2 . F2 . A2 . | C2 . G1 . C2 . E2 . | F2 . C2 . A1 . C2 .',
  },
  {
    rule: 12,
    chart: '| C | C |',
    broken: 'C2 C2 C2 C2 C2 . E2 . | C2 . E2 . G2 . E2 .',
    mended: 'C2 C2 C2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
  },
  {
    rule: 12,
    chart: '| C | C |',
    broken: 'C2 C2 E2 E2 G2 . E2 . | C2 . . . G2 . . .',
    mended: 'C2 C2 E2 E2 G2 . E2 . | C2 . E2 . G2 . E2 .',
  },
  {
    rule: 13,
    chart: '| C | C | C |',
    broken: 'C2 . E2 . G2 . E2 . | C2 . . E2 G2 . E2 . | C2 . . . G2 . E2 .',
    mended: 'C2 . E2 . G2 . E2 . | C2 . . E2 G2 . E2 . | C2 . E2 . G2 . D2 E2',
  },
  {
    rule: 14,
    chart: '| C | C |',
    broken: 'C2 . - - - - E2 . | C2 . - - - - E2 .',
    mended: 'C2 . - - C2 . E2 . | C2 . - - G2 . E2 .',
    wish: { feel: 'one-drop' },
  },
  {
    rule: 14,
    chart: '| C | C |',
    broken: 'C2 . - - C2 . E2 . | - - C2 . - - E2 .',
    mended: 'C2 . - - C2 . E2 . | - - C2 . E2 . - -',
    wish: { feel: 'one-drop' },
  },
  {
    rule: 15,
    chart: '| C F | C |',
    broken: 'C2 . E2 . . . A1 . | C2 . E2 . G2 . E2 .',
    mended: 'C2 . E2 . F2 . A1 . | C2 . E2 . G2 . E2 .',
  },
];

/** The rules that make a line wince, a teacher's list: common practice, no source. */
describe('the fifteen rules', () => {
  test.each(CASES)('rule $rule: $broken', ({ rule, chart, broken, mended, wish }) => {
    expect(rulesOf(chart, broken, wish)).toContain(rule);
    expect(rulesOf(chart, mended, wish)).not.toContain(rule);
  });

  test('every rule has a case', () => {
    expect([...new Set(CASES.map(({ rule }) => rule))].sort((one, other) => one - other)).toEqual(
      Array.from({ length: 15 }, (_, index) => index + 1),
    );
  });

  test('a figure may go on for eight bars and no longer', () => {
    const chart = (bars: number) => Array.from({ length: bars }, () => '| C').join(' ');
    const notes = (bars: number) => Array.from({ length: bars }, () => 'C2 . E2 . G2 . E2 .').join(' | ');
    expect(rulesOf(`${chart(8)} |`, notes(8))).not.toContain(13);
    expect(rulesOf(`${chart(9)} |`, notes(9))).toContain(13);
  });

  test('an unwritten line breaks nothing', () => {
    expect(checkLine(request('| C | F |'), [[], []])).toEqual([]);
  });
});

test('a pickup of one note is not held against the bars around it', () => {
  expect(rulesOf('(1) G7 | C | C |', 'G1 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .')).not.toContain(12);
});
