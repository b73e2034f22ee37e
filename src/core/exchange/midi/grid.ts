import type { FoundMetre } from '../reading/found';
import { metreTicks } from '../reading/metres';
import { lastUpTo } from './last-up-to';
import type { GridBar } from './quantise';
import type { MidiEvent } from './read-file';

const COMMON: FoundMetre = { count: 4, unit: 4 };
/** A change this near to a bar line, in ticks, stands on it. */
const CLOSE = 30;

/**
 * The bars of a file up to a tick: each metre holds from its event on, where a new bar begins.
 * @param most bars that are made
 */
export function barsUpTo(
  end: number,
  events: readonly MidiEvent[],
  most: number,
): { readonly bars: readonly GridBar[]; readonly more: boolean } {
  const changes = events
    .flatMap((event) => (event.kind === 'metre' ? [event] : []))
    .sort((one, other) => one.at - other.at);
  const bars: GridBar[] = [];
  let metre = COMMON;
  let start = 0;
  let next = 0;
  while (start < end || bars.length === 0) {
    if (bars.length >= most) return { bars, more: true };
    for (let change = changes[next]; change && change.at <= start + CLOSE; change = changes[next]) {
      metre = { count: change.count, unit: change.unit };
      next += 1;
    }
    const whole = metreTicks(metre);
    const upcoming = changes[next]?.at ?? Number.POSITIVE_INFINITY;
    const length = upcoming < start + whole - CLOSE ? upcoming - start : whole;
    bars.push({ start, length, metre });
    start += length;
  }
  return { bars, more: false };
}

/** The bar, by index from 0, that a tick lies in; a tick just before a bar line counts as on it. */
export const barAt = (bars: readonly GridBar[], tick: number): number =>
  Math.max(
    0,
    lastUpTo(bars, ({ start }) => start, tick + 1),
  );
