import fc from 'fast-check';
import { expect, test } from 'vitest';
import { COMMON_TIME, type Metre } from '../../src/core/base';
import { swung, swungTogether } from '../../src/core/performance/swing';

const METRES: readonly Metre[] = [
  COMMON_TIME,
  { count: 3, unit: 4 },
  { count: 2, unit: 2 },
  { count: 12, unit: 8 },
];

/** Places on sixteenths, on triplets and on their halves, and now and then anywhere. */
const places = fc.array(
  fc.oneof(
    fc.nat({ max: 16 }).map((step) => step * 240),
    fc.nat({ max: 24 }).map((step) => step * 160),
    fc.nat({ max: 3840 }),
  ),
  { maxLength: 24 },
);

test('what is swung keeps its order, wherever sixteenths and triplets meet', () => {
  fc.assert(
    fc.property(
      places,
      fc.constantFrom(...METRES),
      fc.double({ min: 1, max: 3, noNaN: true }),
      (positions, metre, ratio) => {
        const at = swungTogether(positions, metre, ratio);
        const inOrder = [...new Set(positions)].sort((one, other) => one - other).map(at);
        expect(inOrder.every((place, index) => index === 0 || place > (inOrder[index - 1] ?? 0))).toBe(true);
      },
    ),
    { numRuns: 2000 },
  );
});

test('a beat of sixteenths and a triplet is played as written, the others around it are swung', () => {
  const positions = [0, 480, 960, 1200, 1280, 1920, 2400];
  expect(positions.map(swungTogether(positions, COMMON_TIME, 3))).toEqual([
    0, 720, 960, 1200, 1280, 1920, 2640,
  ]);
  expect(swung(1200, COMMON_TIME, 3)).toBeGreaterThan(swung(1280, COMMON_TIME, 3));
});

test('eighths, sixteenths and triplets in beats of their own are swung as ever', () => {
  const positions = [0, 480, 960, 1200, 1440, 1680, 1920, 2240, 2560];
  const at = swungTogether(positions, COMMON_TIME, 2);
  expect(positions.map(at)).toEqual(positions.map((each) => swung(each, COMMON_TIME, 2)));
});
