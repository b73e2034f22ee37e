import { hasMinorThird } from './modes';
import type { Mode } from './types';

/**
 * How well each pitch class fits a key, from its tonic upwards by half steps: probe-tone ratings of Krumhansl
 * and Kessler, Psychological Review 89(4), 1982, 334–368.
 */
const PROFILES: Readonly<Record<'major' | 'minor', readonly number[]>> = {
  major: [6.35, 2.23, 3.48, 2.33, 4.38, 4.09, 2.52, 5.19, 2.39, 3.66, 2.29, 2.88],
  minor: [6.33, 2.68, 3.52, 5.38, 2.6, 3.53, 2.54, 4.75, 3.98, 2.69, 3.34, 3.17],
};

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

/**
 * How well sounding time matches a key, −1 to 1: the correlation of Krumhansl and Schmuckler (Krumhansl,
 * Cognitive Foundations of Musical Pitch, 1990).
 * @param durations Time that each pitch class sounds, C first, in any unit; 12 numbers.
 * @param tonic Pitch class of the key's tonic.
 * @param mode A church mode is measured as major or minor, by its third.
 */
export function profileCorrelation(durations: readonly number[], tonic: number, mode: Mode): number {
  const profile = PROFILES[hasMinorThird(mode) ? 'minor' : 'major'];
  const rotated = durations.map((_, index) => durations[(index + tonic) % 12] ?? 0);
  const meanDuration = mean(rotated);
  const meanRating = mean(profile);
  let together = 0;
  let ofDurations = 0;
  let ofRatings = 0;
  rotated.forEach((duration, index) => {
    const one = duration - meanDuration;
    const other = (profile[index] ?? 0) - meanRating;
    together += one * other;
    ofDurations += one * one;
    ofRatings += other * other;
  });
  return ofDurations === 0 ? 0 : together / Math.sqrt(ofDurations * ofRatings);
}
