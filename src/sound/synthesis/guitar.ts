import type { Hz } from '../../core/base';
import { biquad, drive, fadeOut, filter } from './filters';
import { pluckString } from './string';

export interface GuitarStroke {
  readonly frequency: Hz;
  readonly seconds: number;
  readonly muted: boolean;
}

/** One string of a chop: thin and bright, let go at once, through a small loudspeaker. */
export function guitarNote({ frequency, seconds, muted }: GuitarStroke, sampleRate: number): Float32Array {
  const samples = pluckString(
    {
      frequency,
      seconds: muted ? Math.min(seconds, 0.08) : seconds,
      decay: muted ? 0.06 : 0.9,
      brightDecay: muted ? 0.03 : 0.28,
      pluckedAt: 0.17,
      heardAt: 0.13,
      pulse: 0.00045,
      stiffness: -0.05,
    },
    sampleRate,
  );
  filter(samples, biquad('high-pass', 220, sampleRate));
  filter(samples, biquad('peak', 1700, sampleRate, 0.9, 4));
  filter(samples, biquad('low-pass', 4800, sampleRate));
  drive(samples, 2.5);
  fadeOut(samples, Math.round(0.008 * sampleRate));
  return samples;
}
