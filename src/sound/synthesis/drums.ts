import { unreachable } from '../../core/base';
import type { DrumSound } from '../../core/feel';
import { closedHat, crash, footHat, type Once, openHat, ride } from './cymbals';
import { biquad, fadeOut, filter, normalise, rounded } from './filters';
import { addFalling, noise, ring } from './strike';

/** A dry kick: a skin whose pitch falls from the blow to its own 52 Hz, and the beater's knock. */
function kick(sampleRate: number, seed: number): Float32Array {
  const samples = new Float32Array(Math.round(0.42 * sampleRate));
  const fallOf = (seconds: number): number => Math.exp(-1 / (seconds * sampleRate));
  const [slower, quicker, fade] = [fallOf(0.024), fallOf(0.005), fallOf(0.105)];
  let [slow, quick, level] = [95, 180, 1];
  let phase = 0;
  for (let index = 0; index < samples.length; index += 1) {
    phase += (2 * Math.PI * (52 + slow + quick)) / sampleRate;
    samples[index] = rounded(1.5 * Math.sin(phase)) * level;
    slow *= slower;
    quick *= quicker;
    level *= fade;
  }
  const knock = noise(Math.round(0.02 * sampleRate), seed);
  filter(knock, biquad('band-pass', 2600, sampleRate, 0.7));
  addFalling(samples, knock, 0.9, 0.0035, sampleRate);
  return samples;
}

/** Two modes of the shell and the wires below it, whose rattle dies in a quick and a slow part. */
function snare(sampleRate: number, seed: number): Float32Array {
  const length = Math.round(0.34 * sampleRate);
  const samples = ring(
    [
      [188, 0.75, 0.05],
      [332, 0.4, 0.032],
      [520, 0.15, 0.018],
    ],
    length,
    sampleRate,
  );
  const wires = noise(length, seed);
  filter(wires, biquad('high-pass', 1100, sampleRate));
  filter(wires, biquad('peak', 4200, sampleRate, 0.8, 4));
  filter(wires, biquad('low-pass', 9500, sampleRate));
  addFalling(samples, wires, 0.62, 0.02, sampleRate);
  addFalling(samples, wires, 0.34, 0.075, sampleRate);
  return samples;
}

/** A stick laid across the drum and struck on its rim: wood, short and pitched. */
function rim(sampleRate: number, seed: number): Float32Array {
  const length = Math.round(0.16 * sampleRate);
  const samples = ring(
    [
      [430, 0.35, 0.022],
      [905, 0.6, 0.016],
      [1720, 1, 0.014],
      [2710, 0.5, 0.009],
      [4150, 0.25, 0.005],
    ],
    length,
    sampleRate,
  );
  const knock = noise(length, seed);
  filter(knock, biquad('band-pass', 3200, sampleRate, 0.6));
  addFalling(samples, knock, 1, 0.0025, sampleRate);
  filter(samples, biquad('high-pass', 250, sampleRate));
  return samples;
}

function raw(sound: DrumSound, sampleRate: number, seed: number, once: Once): Float32Array {
  switch (sound) {
    case 'kick':
      return kick(sampleRate, seed);
    case 'snare':
      return snare(sampleRate, seed);
    case 'rim':
      return rim(sampleRate, seed);
    case 'closed hat':
      return closedHat(sampleRate, seed, once);
    case 'open hat':
      return openHat(sampleRate, seed, once);
    case 'foot hat':
      return footHat(sampleRate, seed, once);
    case 'ride':
      return ride(sampleRate, seed, once);
    case 'crash':
      return crash(sampleRate, seed, once);
    default:
      return unreachable(sound);
  }
}

/** Peaks of a plain hit against each other, as a kit is balanced for a small room. */
const LEVEL: Readonly<Record<DrumSound, number>> = {
  kick: 0.85,
  snare: 0.7,
  rim: 0.7,
  'closed hat': 0.26,
  'open hat': 0.24,
  'foot hat': 0.26,
  ride: 0.52,
  crash: 0.36,
};

/** Where the treble of a soft stroke ends and of the hardest, in hertz: a stick that hardly falls wakes less of it. */
const TREBLE: Readonly<Record<DrumSound, readonly [soft: number, hard: number]>> = {
  kick: [700, 7000],
  snare: [2600, 12_000],
  rim: [2600, 9000],
  'closed hat': [7500, 16_000],
  'open hat': [7500, 16_000],
  'foot hat': [7000, 14_000],
  ride: [5500, 15_000],
  crash: [7000, 16_000],
};

/**
 * Another variation differs as two hits of one hand do.
 * @param once - for what the variations share; made for each hit when left out
 */
export const fullHit = (
  sound: DrumSound,
  variation: number,
  sampleRate: number,
  once: Once = (_, make) => make(),
): Float32Array => raw(sound, sampleRate, 1000 + variation * 7919, once);

/**
 * One hit; another `variation` differs as two hits of one hand do.
 * @param force from 0, a ghost stroke, to 1, an accent: harder is brighter. The loudness is the mixer's.
 * @param full - the hit in all its brightness, where it is at hand
 */
export function drumHit(
  sound: DrumSound,
  variation: number,
  sampleRate: number,
  force = 2 / 3,
  full = fullHit(sound, variation, sampleRate),
): Float32Array {
  const samples = full.slice();
  const [soft, hard] = TREBLE[sound];
  filter(samples, biquad('low-pass', soft * (hard / soft) ** force, sampleRate));
  normalise(samples, LEVEL[sound]);
  fadeOut(samples, Math.round(0.02 * sampleRate));
  return samples;
}
