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

/**
 * As {@link swung}, for everything that begins or ends in a bar. Triplets stay where they are and other places move, so
 * in a beat that has both one could overtake the other: such a beat is played as it is written.
 * @param positions ticks from the beginning of the bar
 */
export function swungTogether(
  positions: readonly number[],
  metre: Metre,
  ratio: number,
): (position: number) => number {
  const beatOf = (position: number): number => Math.floor(position / TICKS_PER_QUARTER);
  const inOrder = [...new Set(positions)].sort((one, other) => one - other);
  const asWritten = new Set<number>();
  inOrder.forEach((position, index) => {
    const before = inOrder[index - 1];
    if (before !== undefined && swung(position, metre, ratio) <= swung(before, metre, ratio))
      asWritten.add(beatOf(before));
  });
  return (position) => (asWritten.has(beatOf(position)) ? position : swung(position, metre, ratio));
}
