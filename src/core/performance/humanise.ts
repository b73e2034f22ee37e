import { createRandom, hashText, ticks } from '../base';
import type { Feel } from '../feel';
import type { PerformanceEvent } from './types';

/** Largest deviation either way, in ticks; the figures are ours. A quarter has 960 ticks. */
const TIME: Readonly<Record<PerformanceEvent['part'], number>> = {
  bass: 8,
  drums: 6,
  chops: 10,
  organ: 10,
  click: 0,
};

/** Largest deviation either way in MIDI velocity; the figures are ours. */
const STRENGTH: Readonly<Record<PerformanceEvent['part'], number>> = {
  bass: 7,
  drums: 15,
  chops: 8,
  organ: 5,
  click: 0,
};

const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** Seconds that a part lies behind the drummer in a feel. */
export const latenessOf = (part: PerformanceEvent['part'], { layBack }: Feel): number =>
  part === 'drums' || part === 'click' ? 0 : layBack[part] / 1000;

/** How people play. */
interface Manner {
  readonly seed: number;
  /** The tick at which the first bar begins. */
  readonly first: number;
  /** The tick at which the round begins that is played again: what belongs to it does not come before it. */
  readonly round: number;
  /** Ticks that a part lies behind the drummer. */
  readonly late: (part: PerformanceEvent['part']) => number;
}

/** From -1 to 1, small ones more often. */
function deviation(seed: number): number {
  const { next } = createRandom(seed);
  return next() + next() - 1;
}

/**
 * Moves every hit a little in time and strength, the click never. Notes that one hand strikes together stay
 * together, a note of the bass reaches over the next one only where it rings on, and nothing comes before the first bar.
 */
export function humanise(
  events: readonly PerformanceEvent[],
  { seed, first, round, late }: Manner,
): readonly PerformanceEvent[] {
  /** The seed for each instrument of each part; a performance has thousands of events, and a dozen of these. */
  const seeds = new Map<string, number>();
  const seedOf = (event: PerformanceEvent): number => {
    const player = `${event.part} ${'sound' in event ? event.sound : ''}`;
    const known = seeds.get(player) ?? hashText(`${seed} ${player} `);
    seeds.set(player, known);
    return hashText(`${event.start} `, known);
  };
  const moved = events.map((event): PerformanceEvent => {
    const seeded = seedOf(event);
    const time = Math.round(deviation(hashText('time', seeded)) * TIME[event.part]) + late(event.part);
    const strength = Math.round(deviation(hashText('strength', seeded)) * STRENGTH[event.part]);
    return {
      ...event,
      start: ticks(Math.max(event.start < round ? first : round, event.start + time)),
      velocity: clamp(event.velocity + strength, 1, 127),
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
