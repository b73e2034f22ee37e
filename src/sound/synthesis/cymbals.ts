import { createRandom } from '../../core/base';
import { biquad, filter } from './filters';
import { addFalling, noise, type Partial, ring } from './strike';

/** The partials of struck metal: no harmonic series, denser upwards; the same for the same seed. */
function metal(count: number, from: number, to: number, decay: number, seed: number): readonly Partial[] {
  const { next } = createRandom(seed);
  return Array.from({ length: count }, (): Partial => {
    const frequency = from * (to / from) ** next();
    return [frequency, 0.4 + 0.6 * next(), decay * (0.5 + next()) * (from / frequency) ** 0.35];
  });
}

/** The metal of one kit is the same at every hit; only the stick's noise varies. */
const KIT = { hat: 11, ride: 23, crash: 37 } as const;

/** Hands out what has that name, made where it is not at hand: hits that follow each other share their metal. */
export type Once = (name: string, make: () => Float32Array) => Float32Array;

interface Hat {
  /** Its hits have the same length. */
  readonly name: string;
  readonly seconds: number;
  /** Seconds, the time constant. */
  readonly decay: number;
  /** Hz, below which nothing of it is heard. */
  readonly low: number;
}

function hat({ name, seconds, decay, low }: Hat, sampleRate: number, seed: number, once: Once): Float32Array {
  const length = Math.round(seconds * sampleRate);
  const samples = new Float32Array(length);
  const tone = once(`metal of the ${name}`, () =>
    ring(metal(36, 3200, 12500, 4, KIT.hat), length, sampleRate),
  );
  const hiss = noise(length, seed);
  addFalling(samples, tone, 0.09, decay, sampleRate);
  addFalling(samples, hiss, 0.34, decay * 0.8, sampleRate);
  addFalling(samples, hiss, 0.5, 0.004, sampleRate);
  filter(samples, biquad('high-pass', low, sampleRate));
  filter(samples, biquad('high-pass', low * 0.8, sampleRate));
  filter(samples, biquad('low-pass', 14000, sampleRate));
  return samples;
}

export const closedHat = (sampleRate: number, seed: number, once: Once): Float32Array =>
  hat({ name: 'closed hat', seconds: 0.2, decay: 0.032, low: 6000 }, sampleRate, seed, once);

export const openHat = (sampleRate: number, seed: number, once: Once): Float32Array =>
  hat({ name: 'open hat', seconds: 0.7, decay: 0.16, low: 5500 }, sampleRate, seed, once);

/** The foot closes the hats: softer and lower than a stick's stroke. */
export const footHat = (sampleRate: number, seed: number, once: Once): Float32Array =>
  hat({ name: 'foot hat', seconds: 0.1, decay: 0.013, low: 4200 }, sampleRate, seed, once);

/** A ping of wood on the bow, and the wash that stays. */
export function ride(sampleRate: number, seed: number, once: Once): Float32Array {
  const length = Math.round(1.3 * sampleRate);
  const samples = new Float32Array(length);
  const tone = once('metal of the ride', () => ring(metal(44, 2100, 11000, 9, KIT.ride), length, sampleRate));
  addFalling(samples, tone, 0.035, 0.36, sampleRate);
  addFalling(
    samples,
    ring(
      [
        [3350, 0.3, 0.05],
        [5210, 0.25, 0.03],
      ],
      length,
      sampleRate,
    ),
    1,
    0.06,
    sampleRate,
  );
  const stick = noise(length, seed);
  addFalling(samples, stick, 0.5, 0.0035, sampleRate);
  addFalling(samples, stick, 0.08, 0.22, sampleRate);
  filter(samples, biquad('high-pass', 2200, sampleRate));
  return samples;
}

export function crash(sampleRate: number, seed: number, once: Once): Float32Array {
  const length = Math.round(2.2 * sampleRate);
  const samples = new Float32Array(length);
  const tone = once('metal of the crash', () =>
    ring(metal(60, 900, 12000, 12, KIT.crash), length, sampleRate),
  );
  addFalling(samples, tone, 0.03, 0.5, sampleRate);
  const wash = noise(length, seed);
  addFalling(samples, wash, 0.35, 0.42, sampleRate);
  addFalling(samples, wash, 0.5, 0.05, sampleRate);
  filter(samples, biquad('high-pass', 1400, sampleRate));
  filter(samples, biquad('low-pass', 13000, sampleRate));
  return samples;
}
