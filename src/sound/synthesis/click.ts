import { biquad, filter, normalise } from './filters';
import { addFalling, noise, ring } from './strike';

/** A dry wooden knock; the accent is higher. */
export function clickSound(accent: boolean, sampleRate: number): Float32Array {
  const samples = new Float32Array(Math.round(0.12 * sampleRate));
  const base = accent ? 2350 : 1650;
  const partials = [
    { frequency: base, strength: 1, decay: 0.018 },
    { frequency: base * 1.52, strength: 0.45, decay: 0.009 },
    { frequency: base * 2.63, strength: 0.2, decay: 0.004 },
  ];
  const attack = 0.0003 * sampleRate;
  const total = partials.reduce((sum, partial) => sum + partial.strength, 0);
  for (let index = 0; index < samples.length; index += 1) {
    const time = index / sampleRate;
    let sum = 0;
    for (const { frequency, strength, decay } of partials) {
      sum += strength * Math.exp(-time / decay) * Math.sin(2 * Math.PI * frequency * time);
    }
    samples[index] = (sum / total) * Math.min(1, (index + 1) / attack);
  }
  return samples;
}

const STICKS_SEED = 41;

/** Two sticks struck against each other, as a drummer counts in; the first of a bar is struck harder. */
export function stickSound(accent: boolean, sampleRate: number): Float32Array {
  const length = Math.round(0.1 * sampleRate);
  const bright = accent ? 1.25 : 1;
  const samples = ring(
    [
      [1240, 0.5, 0.012],
      [2180, 0.7, 0.009],
      [3420, 0.45 * bright, 0.006],
      [5230, 0.25 * bright, 0.0035],
    ],
    length,
    sampleRate,
  );
  const wood = noise(length, STICKS_SEED);
  filter(wood, biquad('band-pass', 3000, sampleRate, 0.7));
  addFalling(samples, wood, 0.9 * bright, 0.002, sampleRate);
  filter(samples, biquad('high-pass', 500, sampleRate));
  // As loud as the click, whose partials never peak all at once.
  normalise(samples, 0.88);
  return samples;
}
