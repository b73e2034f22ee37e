import { createRandom } from '../../core/base';

/** Noise from −1 to 1, the same for the same seed. */
export function noise(length: number, seed: number): Float32Array {
  const { next } = createRandom(seed);
  const samples = new Float32Array(length);
  for (let index = 0; index < length; index += 1) samples[index] = next() * 2 - 1;
  return samples;
}

/** A partial of something struck: Hz, strength, and its time constant in seconds. */
export type Partial = readonly [frequency: number, strength: number, decay: number];

/** A sine by its recurrence: each sample is `turn` of the last less `back` of the one before. */
export interface Sine {
  readonly turn: number;
  readonly back: number;
  readonly before: number;
  readonly now: number;
}

const SILENT: Sine = { turn: 0, back: 0, before: 0, now: 0 };

/** Adds sines to the samples from a place on; four at a time, because none waits for another. */
export function addSines(samples: Float32Array, sines: readonly Sine[], from: number): void {
  for (let first = 0; first < sines.length; first += 4) {
    const [a = SILENT, b = SILENT, c = SILENT, d = SILENT] = sines.slice(first, first + 4);
    const { turn: turnA, back: backA } = a;
    const { turn: turnB, back: backB } = b;
    const { turn: turnC, back: backC } = c;
    const { turn: turnD, back: backD } = d;
    let { before: beforeA, now: nowA } = a;
    let { before: beforeB, now: nowB } = b;
    let { before: beforeC, now: nowC } = c;
    let { before: beforeD, now: nowD } = d;
    for (let index = from; index < samples.length; index += 1) {
      samples[index] = (samples[index] ?? 0) + (nowA + nowB + (nowC + nowD));
      const nextA = turnA * nowA - backA * beforeA;
      const nextB = turnB * nowB - backB * beforeB;
      const nextC = turnC * nowC - backC * beforeC;
      const nextD = turnD * nowD - backD * beforeD;
      beforeA = nowA;
      beforeB = nowB;
      beforeC = nowC;
      beforeD = nowD;
      nowA = nextA;
      nowB = nextB;
      nowC = nextC;
      nowD = nextD;
    }
  }
}

/** Struck partials that ring and die away, each a falling sine. */
export function ring(partials: readonly Partial[], length: number, sampleRate: number): Float32Array {
  const samples = new Float32Array(length);
  const sines = partials.map(([frequency, strength, decay]): Sine => {
    const omega = (2 * Math.PI * frequency) / sampleRate;
    const fall = Math.exp(-1 / (decay * sampleRate));
    const now = strength * fall * Math.sin(omega);
    return { turn: 2 * fall * Math.cos(omega), back: fall * fall, before: 0, now };
  });
  addSines(samples, sines, 1);
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
  const length = Math.min(samples.length, other.length);
  for (let index = 0; index < length; index += 1) {
    samples[index] = (samples[index] ?? 0) + level * (other[index] ?? 0);
    level *= fall;
  }
}
