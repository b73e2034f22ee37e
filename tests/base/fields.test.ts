import { expect, test } from 'vitest';
import { fieldTable, sameFields } from '../../src/core/base';

interface Line {
  readonly name: string;
  readonly bars: readonly number[];
  readonly count?: number;
}

const TABLE = fieldTable<Line>()({ name: false, bars: true, count: true });

test('a table of fields compares what matters and nothing else', () => {
  const bars = [1, 2];
  const line: Line = { name: 'One', bars };
  expect(sameFields(TABLE, line, { name: 'Two', bars })).toBe(true);
  expect(sameFields(TABLE, line, { name: 'One', bars: [1, 2] })).toBe(false);
  expect(sameFields(TABLE, line, { ...line, count: 1 })).toBe(false);
});

test('the compiler refuses a table that forgets a field or invents one', () => {
  // @ts-expect-error a field is forgotten, even one that may be left out of the record
  fieldTable<Line>()({ name: false, bars: true });
  // @ts-expect-error a field is invented
  fieldTable<Line>()({ name: false, bars: true, count: true, tempo: true });
  expect(Object.keys(TABLE)).toEqual(['name', 'bars', 'count']);
});
