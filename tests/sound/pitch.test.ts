import { describe, expect, test } from 'vitest';
import { hzOf, nearestString } from '../../src/core/fretboard';
import { findPitch } from '../../src/sound/ear/pitch';

const RATE = 48_000;

/** A plucked string: partials that fade the faster the higher they are, the second louder than the first. */
function pluck(hz: number, noise: number, length = 8192): Float32Array {
  let seed = 7;
  const chance = () => {
    seed = (seed * 16_807) % 2_147_483_647;
    return seed / 2_147_483_647 - 0.5;
  };
  return Float32Array.from({ length }, (_, index) => {
    const time = index / RATE;
    const partials = [0.35, 0.6, 0.3, 0.2, 0.1, 0.05].reduce(
      (sum, level, at) =>
        sum + level * Math.exp(-time * (1 + at)) * Math.sin(2 * Math.PI * hz * (at + 1) * time + at),
      0,
    );
    return 0.2 * partials + noise * chance();
  });
}

const cents = (heard: number, wanted: number): number => 1200 * Math.log2(heard / wanted);

describe('the ear for a bass', () => {
  // MIDI numbers and A4 = 440 Hz: ISO 16 and the MIDI 1.0 specification; B0 to G3.
  test.each(Array.from({ length: 33 }, (_, index) => 23 + index))(
    'hears note %i within three cents',
    (midi) => {
      const heard = findPitch(pluck(hzOf(midi), 0.01), RATE);
      expect(Math.abs(cents(heard?.hz ?? 1, hzOf(midi)))).toBeLessThan(3);
    },
  );

  test('hears how far a string is out', () => {
    for (const out of [-40, -12, 7, 33]) {
      const heard = findPitch(pluck(hzOf(28) * 2 ** (out / 1200), 0.01), RATE);
      expect(Math.abs(cents(heard?.hz ?? 1, hzOf(28)) - out)).toBeLessThan(3);
    }
  });

  test('hears nothing in silence and in noise, and the same at another rate of the device', () => {
    expect(findPitch(new Float32Array(8192), RATE)).toBeNull();
    expect(findPitch(pluck(0, 0.5), RATE)).toBeNull();
    const slow = Float32Array.from(
      { length: 8192 },
      (_, index) => 0.2 * Math.sin((2 * Math.PI * 55 * index) / 44_100),
    );
    expect(Math.abs(cents(findPitch(slow, 44_100)?.hz ?? 1, 55))).toBeLessThan(3);
  });
});

describe('the string that is tuned', () => {
  const strings = [
    { letter: 'G', alteration: 0, octave: 2 },
    { letter: 'D', alteration: 0, octave: 2 },
    { letter: 'A', alteration: 0, octave: 1 },
    { letter: 'E', alteration: 0, octave: 1 },
  ] as const;

  // Frequencies of the open strings: equal temperament at A4 = 440 Hz.
  test.each([
    [41.2, 3, 'in tune'],
    [53.5, 2, 'too low'],
    [55, 2, 'in tune'],
    [75, 1, 'too high'],
    [98, 0, 'in tune'],
  ] as const)('%d Hz is string %i, %s', (hz, string, verdict) => {
    expect(nearestString(hz, strings)).toMatchObject({ string, verdict });
  });

  test('there is none without strings', () => {
    expect(nearestString(55, [])).toBeNull();
  });
});
