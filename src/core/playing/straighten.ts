import { type Bpm, TICKS_PER_QUARTER } from '../base';
import { isSwung, swingRatio } from '../feel';
import type { LineSheet } from '../lesson';

/** Whether the eighths of a line are heard as swung; in metres of eighths they are thirds of the beat, and played as written. */
export const swingsEighths = ({ metre, feel, tempo }: LineSheet): boolean =>
  metre.unit !== 8 && isSwung(swingRatio(feel, tempo));

/**
 * Where a swung place is written straight; a fraction is kept.
 * @param place ticks from the beginning of a quarter note
 * @param ratio of its eighths, long to short
 */
export function unswung(place: number, ratio: number): number {
  const half = TICKS_PER_QUARTER / 2;
  const long = (TICKS_PER_QUARTER * ratio) / (1 + ratio);
  return place <= long ? (place * half) / long : half + ((place - long) * half) / (TICKS_PER_QUARTER - long);
}

/**
 * The straight position of a swung moment within its bar: the score is written straight and played swung.
 * @param tick ticks from the beginning of the bar, as it sounds; a fraction is kept
 * @param tempo the tempo in force, on which the swing depends
 */
export function straightened(tick: number, sheet: LineSheet, tempo: Bpm): number {
  if (sheet.metre.unit === 8) return tick;
  const ratio = swingRatio(sheet.feel, tempo);
  const within = tick % TICKS_PER_QUARTER;
  return tick - within + unswung(within, ratio);
}
