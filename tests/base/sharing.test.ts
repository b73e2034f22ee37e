import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alike, shareParts } from '../../src/core/base';

test('what did not change is the very object it was before', () => {
  const before = { title: 'Old', bars: [{ notes: [1, 2] }, { notes: [3] }], hand: { frets: 12 } };
  const after = shareParts(before, structuredClone({ ...before, bars: [before.bars[0], { notes: [4] }] }));
  expect(after).toEqual({ ...before, bars: [{ notes: [1, 2] }, { notes: [4] }] });
  expect(after.hand).toBe(before.hand);
  expect(after.bars[0]).toBe(before.bars[0]);
  expect(shareParts(before, structuredClone(before))).toBe(before);
});

test('whatever was before, the document says what it said', () => {
  fc.assert(
    fc.property(fc.object(), fc.object(), (before, after) => {
      expect(shareParts(before, after)).toEqual(after);
      expect(shareParts(after, structuredClone(after))).toEqual(after);
    }),
  );
});

test('two documents are alike where sharing their parts leaves the first as it was', () => {
  const value = fc.anything({
    withBigInt: false,
    withDate: false,
    withMap: false,
    withSet: false,
    maxDepth: 3,
  });
  const pair = fc.oneof(
    fc.tuple(value, value),
    value.map((one) => [one, structuredClone(one)] as const),
    fc.tuple(value, value, value).map(
      ([one, two, three]) =>
        [
          { one, two },
          { one, two: three },
        ] as const,
    ),
  );
  fc.assert(
    fc.property(pair, ([one, other]) => {
      const [before, after] = [{ part: one }, { part: other }];
      expect(alike(before, after)).toBe(shareParts(before, after) === before);
    }),
  );
});
