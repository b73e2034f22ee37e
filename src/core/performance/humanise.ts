import { createRandom, hashText, ticks } from '../base';
import type { PerformanceEvent } from './types';

/** Largest deviation either way, in ticks; common practice, no source. A quarter has 960 ticks. */
const TIME: Readonly<Record<PerformanceEvent['part'], number>> = {
  bass: 8,
  drums: 6,
  chops: 10,
  organ: 10,
  click: 0,
};

/** Largest deviation either way in MIDI velocity. */
const STRENGTH: Readonly<Record<PerformanceEvent['part'], number>> = {
  bass: 7,
  drums: 15,
  chops: 8,
  organ: 5,
  click: 0,
};

const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/**
 * Moves every hit a little in time and strength, the click never. Notes that one hand strikes together stay
 * together, a note of the bass reaches over the next one only where it rings on, and nothing comes before the first bar.
 * @param first the tick at which the first bar begins.
 * @param round the tick at which the round begins that is played again: what belongs to it does not come before it.
 */
export function humanise(
  events: readonly PerformanceEvent[],
  seed: number,
  first: number,
  round: number = first,
): readonly PerformanceEvent[] {
  const deviation = (event: PerformanceEvent, what: string): number => {
    const instrument = 'sound' in event ? event.sound : '';
    const { next } = createRandom(hashText(`${seed} ${event.part} ${instrument} ${event.start} ${what}`));
    return next() + next() - 1;
  };
  const moved = events.map((event): PerformanceEvent => {
    const start = Math.max(
      event.start < round ? first : round,
      event.start + Math.round(deviation(event, 'time') * TIME[event.part]),
    );
    return {
      ...event,
      start: ticks(start),
      velocity: clamp(
        event.velocity + Math.round(deviation(event, 'strength') * STRENGTH[event.part]),
        1,
        127,
      ),
    };
  });
  const bassStarts = moved.flatMap((event) => (event.part === 'bass' ? [event.start] : []));
  let bassIndex = 0;
  return moved.map((event): PerformanceEvent => {
    if (event.part !== 'bass') {
      return event;
    }
    bassIndex += 1;
    const next = event.rings === true ? undefined : bassStarts[bassIndex];
    return {
      ...event,
      duration: ticks(
        Math.max(1, Math.min(event.duration, (next ?? Number.POSITIVE_INFINITY) - event.start)),
      ),
    };
  });
}
