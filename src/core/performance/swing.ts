import { isCompound, type Metre, TICKS_PER_QUARTER } from '../base';

const SIXTEENTH = TICKS_PER_QUARTER / 4;
const TRIPLET_SIXTEENTH = TICKS_PER_QUARTER / 6;

/**
 * Where a straight position of a bar sounds when pairs of eighths are swung, rounded to a tick. Sixteenths
 * share the stretched and the shortened eighth evenly. Triplets are triplets already and stay; so do compound
 * metres, whose beats are not pairs.
 * @param position ticks from the beginning of the bar.
 */
export function swung(position: number, metre: Metre, ratio: number): number {
  if (ratio === 1 || metre.unit === 8 || isCompound(metre)) {
    return position;
  }
  const within = position % TICKS_PER_QUARTER;
  if (within % TRIPLET_SIXTEENTH === 0 && within % SIXTEENTH !== 0) {
    return position;
  }
  const half = TICKS_PER_QUARTER / 2;
  const long = (TICKS_PER_QUARTER * ratio) / (1 + ratio);
  const moved =
    within <= half ? (within * long) / half : long + ((within - half) * (TICKS_PER_QUARTER - long)) / half;
  return position - within + Math.round(moved);
}
