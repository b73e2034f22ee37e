import type { Performance } from '../../src/core/performance';
import { sampleAt } from '../../src/sound/synthesis/score';
import type { Scheduled } from '../../src/sound/timeline';

/** The rate of what is scheduled, in samples a second. */
export const RATE = 48_000;

/**
 * A performance at its place in the device's time.
 * @param entered - the tick at which it is entered
 * @param start - the sample of the device's time at which it begins
 */
export function schedule(
  performance: Performance,
  entered: number,
  start: number,
  rounds: Scheduled['rounds'],
): Scheduled {
  const countIn = sampleAt(performance, performance.countIn, RATE);
  const roundLength = sampleAt(performance, performance.end, RATE) - countIn;
  const begin = sampleAt(performance, entered, RATE) - countIn;
  const total = rounds === 'endless' ? null : rounds * roundLength - begin;
  return {
    step: 0,
    performance,
    rounds,
    firstRound: 0,
    begins: { rung: 0, round: 0, playedBar: 0 },
    entered,
    segment: { sampleRate: RATE, begin, roundLength, total },
    start,
    end: total === null ? null : start + total,
  };
}
