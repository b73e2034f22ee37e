import { createRandom } from '../../core/base';

/** Noise from −1 to 1, the same for the same seed. */
export function noise(length: number, seed: number): Float32Array {
  const { next } = createRandom(seed);
  return Float32Array.from({ length }, () => next() * 2 - 1);
}

/** A partial of something struck: Hz, strength, and its time constant in seconds. */
export type Partial = readonly [frequency: number, strength: number, decay: number];

/** Struck partials that ring and die away, each by the recurrence of a falling sine. */
export function ring(partials: readonly Partial[], length: number, sampleRate: number): Float32Array {
  const samples = new Float32Array(length);
  for (const [frequency, strength, decay] of partials) {
    const omega = (2 * Math.PI * frequency) / sampleRate;
    const fall = Math.exp(-1 / (decay * sampleRate));
    const turn = 2 * fall * Math.cos(omega);
    const back = fall * fall;
    let before = 0;
    let now = strength * fall * Math.sin(omega);
    for (let index = 1; index < length; index += 1) {
      samples[index] = (samples[index] ?? 0) + now;
      const next = turn * now - back * before;
      before = now;
      now = next;
    }
  }
  return samples;
}

/** Adds `other`, shaped by a fall with the time constant `decay` in seconds, to `samples`. */
export function addFalling(
  samples: Float32Array,
  other: Float32Array,
  strength: number,
  decay: number,
  sampleRate: number,
): void {
  const fall = Math.exp(-1 / (decay * sampleRate));
  let level = strength;
  for (let index = 0; index < Math.min(samples.length, other.length); index += 1) {
    samples[index] = (samples[index] ?? 0) + level * (other[index] ?? 0);
    level *= fall;
  }
}
