import type { Hz } from '../../core/base';
import { biquad, fadeOut, filter, rounded } from './filters';
import { addSines, type Sine } from './strike';

/** Drawbars as multiples of the pitch with their strengths: a round sound with a hollow fifth, light below. */
const DRAWBARS: readonly (readonly [multiple: number, strength: number])[] = [
  [0.5, 0.22],
  [1, 1],
  [1.5, 0.32],
  [2, 0.4],
  [3, 0.16],
  [4, 0.1],
];

/** A slow chorus, in Hz and as a share of the strength. */
const TREMBLE = { rate: 6.3, depth: 0.09 } as const;

/** The drawbars' waves begin apart, so that they do not all peak at once. */
const PHASE = 1.3;

/** An organ key held for so long, with the click of its contact at the beginning. */
export function organNote(frequency: Hz, seconds: number, sampleRate: number): Float32Array {
  const samples = new Float32Array(Math.max(1, Math.round(seconds * sampleRate)));
  const attack = Math.max(1, Math.round(0.003 * sampleRate));
  const audible = DRAWBARS.filter(([multiple]) => frequency * multiple < sampleRate * 0.45);
  const sines = audible.map(([multiple, strength], drawbar): Sine => {
    const omega = (2 * Math.PI * frequency * multiple) / sampleRate;
    return {
      turn: 2 * Math.cos(omega),
      back: 1,
      before: strength * Math.sin(drawbar * PHASE - omega),
      now: strength * Math.sin(drawbar * PHASE),
    };
  });
  addSines(samples, sines, 0);
  const total = DRAWBARS.reduce((sum, [, strength]) => sum + strength, 0);
  const tremble = (2 * Math.PI * TREMBLE.rate) / sampleRate;
  const driven = 1.6 / total;
  const full = Math.tanh(1.6);
  const turn = 2 * Math.cos(tremble);
  let before = Math.sin(-tremble);
  let sine = 0;
  for (let index = 0; index < samples.length; index += 1) {
    const rise = index < attack ? (index + 1) / attack : 1;
    const sway = 1 - TREMBLE.depth * (0.5 + 0.5 * sine);
    samples[index] = (rounded(driven * (samples[index] ?? 0)) * rise * sway) / full;
    const next = turn * sine - before;
    before = sine;
    sine = next;
  }
  // Rounding a wave that is not even leaves a direct current behind, which only takes headroom.
  filter(samples, biquad('high-pass', 30, sampleRate));
  fadeOut(samples, Math.round(0.008 * sampleRate));
  return samples;
}
