import type { Hz } from '../../core/base';
import { biquad, drive, fadeOut, filter, scale } from './filters';
import { pluckString } from './string';

/** How hard a bass note is struck, 0 (a touch) to 1 (an accent): harder is brighter. */
export interface BassStroke {
  readonly frequency: Hz;
  readonly seconds: number;
  readonly force: number;
  /** Damped by the hand: a short knock with hardly a pitch. */
  readonly muted: boolean;
}

const LOW_E = 41.2;

/**
 * A plucked bass string through a pickup and a small amplifier. A pickup hears the string's speed, whose
 * partials fall by 6 dB an octave: hence the one pole; the low shelf makes up for what the pickup's place takes
 * from the fundamental, so that low notes are heard as low.
 */
export function bassNote(stroke: BassStroke, sampleRate: number): Float32Array {
  const { frequency, force, muted } = stroke;
  const seconds = muted ? Math.min(stroke.seconds, 0.22) : stroke.seconds;
  const samples = pluckString(
    {
      frequency,
      seconds,
      decay: muted ? 0.16 : 7 * (LOW_E / frequency) ** 0.45,
      brightDecay: muted ? 0.03 : 0.3 + 0.2 * force,
      pluckedAt: 0.21,
      heardAt: 0.24,
      pulse: 0.0022 - 0.0012 * force,
      stiffness: -0.12,
    },
    sampleRate,
  );
  const pole = Math.exp((-2 * Math.PI * 25) / sampleRate);
  let slow = 0;
  for (let index = 0; index < samples.length; index += 1) {
    slow = (samples[index] ?? 0) * (1 - pole) + slow * pole;
    samples[index] = slow;
  }
  filter(samples, biquad('high-pass', 18, sampleRate));
  filter(samples, biquad('low shelf', 95, sampleRate, Math.SQRT1_2, 3));
  filter(samples, biquad('low-pass', 1800 + 2600 * force, sampleRate));
  drive(samples, 1.1);
  if (muted) {
    scale(samples, 0.6);
  }
  fadeOut(samples, Math.round(0.01 * sampleRate));
  return samples;
}
