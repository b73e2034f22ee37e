/** Parts that are added two at a time and four samples at a time, against adding them sample by sample. */
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../src/core/base';
import { addFaded, addParts, type Part } from '../../src/sound/synthesis/adding';
import { furthest } from './plain-room';

const { next } = createRandom(7);
const noise = (length: number): Float32Array => Float32Array.from({ length }, () => next() * 2 - 1);

/** Sample by sample, in double precision. */
function plainly(length: number, parts: readonly Part[]): Float64Array {
  const stem = new Float64Array(length);
  for (const { at, gain, samples } of parts) {
    for (const [index, sample] of samples.entries()) {
      const place = at + index;
      if (place >= 0 && place < length) stem[place] = (stem[place] ?? 0) + gain * sample;
    }
  }
  return stem;
}

const part = (at: number, length: number): Part => ({ at, gain: 0.2 + next(), samples: noise(length) });

const CASES: readonly (readonly [what: string, parts: readonly Part[]])[] = [
  ['nothing', []],
  ['one', [part(3, 50)]],
  ['two that begin together', [part(10, 41), part(10, 42)]],
  ['three, the last one first', [part(60, 30), part(20, 70), part(1, 33)]],
  ['five that overlap, and one after a silence', [...[5, 6, 7, 8, 9].map((at) => part(at, 40)), part(80, 9)]],
  ['what begins before the stem and what ends after it', [part(-20, 45), part(-3, 200), part(97, 30)]],
  ['what is over before the stem begins and what begins after it', [part(-30, 30), part(100, 5)]],
  ['parts of one sample and of none', [part(0, 1), part(1, 1), part(99, 1), part(50, 0)]],
];

describe('parts of a stem', () => {
  test.each(CASES)('%s', (_, parts) => {
    const stem = new Float32Array(100);
    addParts(
      stem,
      parts.map((each) => ({ at: each.at, part: () => each })),
    );
    expect(furthest(stem, plainly(100, parts))).toBeLessThan(1e-6);
  });

  test('each is asked for once, in the order in which they begin, and none that begins after the end', () => {
    const asked: number[] = [];
    addParts(
      new Float32Array(100),
      [70, 100, 10, -5, 40].map((at) => ({
        at,
        part: () => {
          asked.push(at);
          return part(at, 30);
        },
      })),
    );
    expect(asked).toEqual([-5, 10, 40, 70]);
  });

  test.each([
    [10, 60],
    [-20, 60],
    [70, 60],
    [-50, 60],
    [-70, 60],
  ])('a part that begins at %i and fades at its end', (at, length) => {
    const faded = part(at, 80);
    const stem = new Float32Array(100);
    addFaded(stem, faded, length, 20);
    const samples = faded.samples
      .slice(0, length)
      .map(
        (sample, index) => sample * (0.5 + 0.5 * Math.cos((Math.PI * Math.max(0, index - length + 21)) / 20)),
      );
    expect(furthest(stem, plainly(100, [{ ...faded, samples }]))).toBeLessThan(1e-6);
  });
});
