import { describe, expect, test } from 'vitest';
import { largestStaff, turnRows } from '../../src/app/pages/show/page-turn';
import { silencesOf } from '../../src/app/pages/show/silence';

describe('the rows of the large view', () => {
  const empty = { rows: [null, null], at: 0 };

  test('what is played never moves; what comes next stands where the last row was', () => {
    const first = turnRows(empty, 0, 1);
    expect(first).toEqual({ rows: [0, 1], at: 0 });
    const second = turnRows(first, 1, 2);
    expect(second).toEqual({ rows: [2, 1], at: 1 });
    expect(turnRows(second, 2, 3)).toEqual({ rows: [2, 3], at: 0 });
    expect(turnRows(second, 1, 2)).toBe(second);
  });

  test('a jump is shown in the row that is read; a loop of one row has nothing beside it', () => {
    expect(turnRows({ rows: [2, 1], at: 1 }, 5, 6)).toEqual({ rows: [6, 5], at: 1 });
    expect(turnRows(empty, 4, 4)).toEqual({ rows: [4, null], at: 0 });
    expect(turnRows({ rows: [null], at: 0 }, 3, 4)).toEqual({ rows: [3], at: 0 });
  });
});

test('the staff is as large as height and width let it be', () => {
  const tryAt = (space: number) => ({ height: space * 20, systems: space > 30 ? 6 : 4 });
  expect(largestStaff(tryAt, 2, 800)).toBeCloseTo(20, 0);
  expect(largestStaff(tryAt, 1, 800)).toBeCloseTo(30, 0);
  expect(largestStaff(tryAt, 2, 10)).toBe(8);
});

test('silence is told from half a beat on, at the beginning, in the middle and at the end of a bar', () => {
  const metre = { count: 4, unit: 4 } as const;
  const notes = [
    { start: 960, duration: 900 },
    { start: 1920, duration: 480 },
  ];
  expect(silencesOf(notes, metre)).toEqual([
    { start: 0, end: 960 },
    { start: 2400, end: 3840 },
  ]);
  expect(silencesOf([], metre)).toEqual([{ start: 0, end: 3840 }]);
  expect(silencesOf([{ start: 0, duration: 3840 }], metre)).toEqual([]);
});
