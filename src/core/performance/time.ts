import type { Performance, PlayedBar } from './types';

/** Seconds from the beginning of the performance to `tick` (which may be a fraction), at the tempo in force. */
export const secondsAt = (performance: Performance, tick: number): number =>
  ((tick / performance.beat) * 60) / performance.tempo;

/** The tick, not rounded, that sounds `seconds` after the beginning of the performance. */
export const tickAt = (performance: Performance, seconds: number): number =>
  (seconds * performance.tempo * performance.beat) / 60;

/**
 * The bar that is played at `tick`, with its index among the played bars; null in the count-in, in an empty
 * bar and outside the performance.
 */
export function playedBarAt(
  performance: Performance,
  tick: number,
): { readonly index: number; readonly bar: PlayedBar } | null {
  let from = 0;
  let to = performance.bars.length - 1;
  while (from <= to) {
    const index = (from + to) >> 1;
    const bar = performance.bars[index];
    if (bar === undefined || tick < bar.start) {
      to = index - 1;
    } else if (tick >= bar.start + bar.duration) {
      from = index + 1;
    } else {
      return { index, bar };
    }
  }
  return null;
}
