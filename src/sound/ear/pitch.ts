import { lowPass } from './filters';

/** A pitch that was heard. */
export interface HeardPitch {
  readonly hz: number;
  /** How periodic the sound is, from 0 to 1. */
  readonly clarity: number;
}

/** Hz between which a bass sounds: below the low B (30.9) and above the frets of the highest string. */
const LOWEST = 28;
const HIGHEST = 450;

/** Less clear than this is noise, or a note that begins; less loud than this is silence (root mean square). */
const CLEAR = 0.8;
const LOUD = 0.004;

/** The highest rate at which periods are looked for, in Hz. */
const ENOUGH = 12_000;

/** Hz above which nothing of a bass note helps to find its pitch. */
const CUT = 1200;

/** Every so many samples one. */
function thinned(samples: Float32Array, step: number): Float32Array {
  const kept = new Float32Array(Math.floor(samples.length / step));
  for (let index = 0; index < kept.length; index += 1) kept[index] = samples[index * step] ?? 0;
  return kept;
}

/** How alike a sound and the same sound later are, from −1 to 1, for every lag up to `longest`. */
function likeness(samples: Float32Array, longest: number): Float32Array {
  const alike = new Float32Array(longest + 1);
  for (let lag = 0; lag <= longest; lag += 1) {
    let product = 0;
    let power = 0;
    for (let index = 0; index + lag < samples.length; index += 1) {
      const here = samples[index] ?? 0;
      const later = samples[index + lag] ?? 0;
      product += here * later;
      power += here * here + later * later;
    }
    alike[lag] = power === 0 ? 0 : (2 * product) / power;
  }
  return alike;
}

/** The highest place of each hill after the first valley. */
function peaksOf(alike: Float32Array, shortest: number): readonly number[] {
  const at = (lag: number): number => alike[lag] ?? 0;
  const isTop = (lag: number): boolean => at(lag) > 0 && at(lag) >= at(lag - 1) && at(lag) >= at(lag + 1);
  const valley = alike.findIndex((value) => value <= 0);
  const peaks: number[] = [];
  let best = 0;
  for (let lag = Math.max(shortest, valley); valley >= 0 && lag < alike.length - 1; lag += 1) {
    if (isTop(lag) && (best === 0 || at(lag) > at(best))) best = lag;
    if (at(lag) <= 0 && best > 0) {
      peaks.push(best);
      best = 0;
    }
  }
  return best > 0 ? [...peaks, best] : peaks;
}

/** A peak is taken when it is as high as this share of the highest: the first of them is the period itself. */
const FIRST_HIGH = 0.9;

/**
 * The pitch of a bass note in a stretch of low-passed and thinned sound, by the method of P. McLeod and G. Wyvill ("A
 * smarter way to find pitch", International Computer Music Conference, 2005).
 * @param heard - from −1 to 1; a tenth of a second or more for the lowest notes
 * @param rate - its samples a second
 * @returns null for silence, noise, and a note that only begins
 */
export function pitchOf(heard: Float32Array, rate: number): HeardPitch | null {
  const power = heard.reduce((sum, value) => sum + value * value, 0);
  if (Math.sqrt(power / Math.max(1, heard.length)) < LOUD) return null;
  const longest = Math.min(Math.ceil(rate / LOWEST), Math.floor(heard.length / 2));
  const alike = likeness(heard, longest);
  const peaks = peaksOf(alike, Math.floor(rate / HIGHEST));
  const highest = Math.max(0, ...peaks.map((lag) => alike[lag] ?? 0));
  const period = peaks.find((lag) => (alike[lag] ?? 0) >= highest * FIRST_HIGH);
  if (period === undefined || highest < CLEAR) return null;
  // A parabola through the peak and its neighbours finds the place between two samples.
  const [left, middle, right] = [alike[period - 1] ?? 0, alike[period] ?? 0, alike[period + 1] ?? 0];
  const bend = left - 2 * middle + right;
  const shift = bend === 0 ? 0 : (left - right) / (2 * bend);
  return { hz: rate / (period + shift), clarity: Math.min(1, middle) };
}

/** The pitch of a bass note in a stretch of sound as it comes: what a bass does not sound is taken out of it first. */
export function findPitch(samples: Float32Array, sampleRate: number): HeardPitch | null {
  const step = Math.max(1, Math.floor(sampleRate / ENOUGH));
  return pitchOf(thinned(samples.map(lowPass(CUT, sampleRate)), step), sampleRate / step);
}
