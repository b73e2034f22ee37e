import { barTicks, beatAt, beatTicks, type Metre, TICKS_PER_QUARTER } from '../base';
import type { NotatedEvent } from './types';

/**
 * Which events share a beam: four plain eighths may join within the half of a bar in two or four; everything
 * else joins by the beat (musicengravingtips.com, "Beaming", 2020/01/20): in 7/8 by two, two and three eighths. A rest
 * ends a beam, and a triplet has its own.
 */
export function beamGroups(events: readonly NotatedEvent[], metre: Metre): readonly (readonly number[])[] {
  const groups: number[][] = [];
  let open: { window: string; members: number[] } | null = null;
  events.forEach((event, index) => {
    const beamable = event.kind === 'note' && event.value >= 8;
    if (!beamable) {
      open = null;
      return;
    }
    const window = windowOf(event, events, metre);
    if (open?.window === window) {
      open.members.push(index);
    } else {
      open = { window, members: [index] };
      groups.push(open.members);
    }
  });
  return groups.filter((group) => group.length > 1);
}

function windowOf(event: NotatedEvent, events: readonly NotatedEvent[], metre: Metre): string {
  if (event.triplet !== null) return `triplet ${event.triplet}`;
  const half = 2 * TICKS_PER_QUARTER;
  if (metre.unit !== 8 && barTicks(metre) % half === 0) {
    const start = Math.floor(event.start / half) * half;
    const inside = events.filter((other) => other.start >= start && other.start < start + half);
    const four = inside.length === 4 && inside.every(isPlainEighth);
    if (four) return `half ${start}`;
  }
  if (metre.unit === 8) return `beat ${beatAt(metre, event.start).index}`;
  return `beat ${Math.floor(event.start / Math.min(beatTicks(metre), TICKS_PER_QUARTER))}`;
}

const isPlainEighth = (event: NotatedEvent): boolean =>
  event.kind === 'note' && event.value === 8 && event.dots === 0 && event.triplet === null;
