import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hashText } from '../../src/core/base';

test('the number of a text is that of FNV-1a with 32 bits', () => {
  // From the test vectors of draft-eastlake-fnv (G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake).
  expect(['', 'a', 'b', 'foobar'].map((text) => hashText(text))).toEqual([
    0x811c9dc5, 0xe40c292c, 0xe70c2de5, 0xbf9cf968,
  ]);
});

test('a text can be given in two parts', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (one, other) => {
      expect(hashText(other, hashText(one))).toBe(hashText(one + other));
    }),
  );
});
