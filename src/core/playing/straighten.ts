import { type Bpm, TICKS_PER_QUARTER } from '../base';
import { isSwung, swingRatio, unswung } from '../feel';
import type { LineSheet } from '../lesson';

/** Whether the eighths of a line are heard as swung; in metres of eighths they are thirds of the beat, and played as written. */
export const swingsEighths = ({ metre, feel, tempo }: LineSheet): boolean =>
  metre.unit !== 8 && isSwung(swingRatio(feel, tempo));

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
