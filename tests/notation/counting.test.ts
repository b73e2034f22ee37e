import { describe, expect, test } from 'vitest';
import { barTicks, beatAt, beatsOf, type Metre } from '../../src/core/base';
import { CHART_METRES } from '../../src/core/chart';
import { countingOf, notateBar } from '../../src/core/notation';

const counted = (metre: Metre, lengths: readonly number[]): string => {
  let start = 0;
  const sounds = lengths.map((quarters) => {
    const duration = quarters * 960;
    start += duration;
    return { start: start - duration, duration };
  });
  return countingOf(notateBar(sounds, metre).events, metre)
    .map(({ text }) => text)
    .join(' ');
};

const eighths = (count: number): readonly number[] => Array.from({ length: count }, () => 0.5);

/**
 * Counting aloud: `1 & 2 &` (readmusicmethod.com, "Counting rhythms"); `1 & a` in compound time, and the long beat of 7/8
 * like one of those: common practice, no source.
 */
describe('a bar is counted', () => {
  test.each([
    ['2/4', { count: 2, unit: 4 }, eighths(4), '1 & 2 &'],
    ['5/4', { count: 5, unit: 4 }, [1, 1, 1, 1, 1], '1 2 3 4 5'],
    ['5/4', { count: 5, unit: 4 }, [3, 2], '1 (2) (3) 4 (5)'],
    ['7/8', { count: 7, unit: 8 }, eighths(7), '1 & 2 & 3 & a'],
    ['7/8', { count: 7, unit: 8 }, [1, 1, 1, 0.5], '1 2 3 a'],
    ['7/8', { count: 7, unit: 8 }, [2, 1.5], '1 (2) 3'],
    ['9/8', { count: 9, unit: 8 }, eighths(9), '1 & a 2 & a 3 & a'],
    ['9/8', { count: 9, unit: 8 }, [3, 1.5], '1 (2) 3'],
  ] as const)('in %s', (_, metre, lengths, text) => {
    expect(counted(metre, lengths)).toBe(text);
  });
});

test('the beats of every metre fill its bar without a gap', () => {
  for (const metre of CHART_METRES) {
    let at = 0;
    for (const beat of beatsOf(metre)) {
      expect(beat.start).toBe(at);
      expect(beatAt(metre, beat.start + beat.length - 1)).toEqual(beat);
      at += beat.length;
    }
    expect(at).toBe(barTicks(metre));
  }
});
