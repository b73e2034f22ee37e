import { expect, test } from 'vitest';
import { integratedLoudness, TRACK_RATE, truePeak } from '../../src/tracks/loudness';

/** A stereo sine of 1 kHz whose level steps: seconds, and the peak in dBFS on both channels. */
function steps(...parts: readonly (readonly [seconds: number, level: number])[]) {
  const length = Math.round(parts.reduce((sum, [seconds]) => sum + seconds, 0) * TRACK_RATE);
  const left = new Float32Array(length);
  let from = 0;
  for (const [seconds, level] of parts) {
    const to = from + Math.round(seconds * TRACK_RATE);
    for (let index = from; index < to; index += 1) {
      left[index] = 10 ** (level / 20) * Math.sin((2 * Math.PI * 1000 * index) / TRACK_RATE);
    }
    from = to;
  }
  return { left, right: left, sampleRate: TRACK_RATE };
}

// EBU Tech 3341 (2023), Table 1: minimum requirements of a loudness meter, cases 1 to 5, ±0.1 LU.
test.each([
  ['1', steps([20, -23]), -23],
  ['2', steps([20, -33]), -33],
  ['3', steps([10, -36], [60, -23], [10, -36]), -23],
  ['4', steps([10, -72], [10, -36], [60, -23], [10, -36], [10, -72]), -23],
  ['5', steps([20, -26], [20.1, -20], [20, -26]), -23],
])('the meter reads EBU Tech 3341 case %s', (_, sound, expected) => {
  expect(Math.abs(integratedLoudness(sound) - expected)).toBeLessThanOrEqual(0.1);
});

// EBU Tech 3341 (2023), Table 1, cases 15 to 18: a sine at a quarter of the sample rate, whose peaks lie between the samples.
test.each([
  [0, 0.5, -6],
  [45, 0.5, -6],
  [60, 0.5, -6],
  [67.5, 0.5, -6],
])('the meter sees the peak between the samples of a sine at %s degrees', (degrees, amplitude, expected) => {
  const samples = Float32Array.from(
    { length: 4800 },
    (_, index) => amplitude * Math.sin((Math.PI / 2) * index + (degrees * Math.PI) / 180),
  );
  const read = truePeak(samples);
  expect(read).toBeLessThanOrEqual(expected + 0.2);
  expect(read).toBeGreaterThanOrEqual(expected - 0.4);
});
