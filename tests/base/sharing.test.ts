import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareParts } from '../../src/core/base';

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
