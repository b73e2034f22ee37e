import type { Hz } from '../../core/base';
import { biquad, drive, fadeOut, filter, scale } from './filters';
import { addFalling, noise } from './strike';
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
const FINGERTIP_SEED = 5;

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
      brightDecay: muted ? 0.03 : 0.4 + 0.3 * force,
      pluckedAt: 0.23,
      heardAt: 0.17,
      pulse: 0.0013 - 0.0007 * force,
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
  filter(samples, biquad('low shelf', 60, sampleRate, Math.SQRT1_2, 5));
  filter(samples, biquad('low-pass', 2000 + 3000 * force, sampleRate));
  drive(samples, 1.1);
  if (muted) {
    scale(samples, 0.6);
  }
  addFingertip(samples, force, sampleRate);
  fadeOut(samples, Math.round(0.01 * sampleRate));
  return samples;
}

/** The soft scrape of a fingertip leaving the string, which tells the ear when the note begins. */
function addFingertip(samples: Float32Array, force: number, sampleRate: number): void {
  const scrape = noise(Math.min(samples.length, Math.round(0.04 * sampleRate)), FINGERTIP_SEED);
  filter(scrape, biquad('band-pass', 1300, sampleRate, 0.8));
  addFalling(samples, scrape, 0.05 + 0.1 * force, 0.006, sampleRate);
}
