import { SIGNS } from '../../core/base';
import { boxOf } from '../ink';
import type { ContentEvent, ContentExit } from '../notation/types';
import { type PlacedBar, xOfTick } from './placed';
import { HALF_HEAD } from './style';

/** A note or rest at its place in a system. */
export interface PlacedEvent {
  readonly event: ContentEvent;
  readonly placed: PlacedBar;
  /** Its place among the bar's events. */
  readonly index: number;
  readonly x: number;
}

/** What joins two notes; an end that lies in another system is null. */
export interface Joint {
  readonly exit: ContentExit;
  readonly from: PlacedEvent | null;
  readonly to: PlacedEvent | null;
  /** Where the system begins or ends, for the end that lies elsewhere. */
  readonly edge: number;
}

export const eventAt = (placed: PlacedBar, index: number): PlacedEvent | null => {
  const event = placed.bar.content.events[index];
  return event ? { event, placed, index, x: xOfTick(placed, event.start) } : null;
};

const placedEvents = new WeakMap<readonly PlacedBar[], readonly PlacedEvent[]>();

/** The events of a system's bars, which all of its rows ask for. */
export function eventsOf(bars: readonly PlacedBar[]): readonly PlacedEvent[] {
  const known = placedEvents.get(bars);
  if (known) return known;
  const events = bars.flatMap((placed) =>
    placed.bar.content.events.flatMap((_, index) => eventAt(placed, index) ?? []),
  );
  placedEvents.set(bars, events);
  return events;
}

const EDGE = 3;
/** A curve that leads to nothing is this long. */
const DANGLING = 22;

/** The curves and lines between notes, those over a system's edges among them. */
export function jointsOf(bars: readonly PlacedBar[]): readonly Joint[] {
  const joints: Joint[] = [];
  bars.forEach((placed, bar) => {
    const { entered } = placed.bar.content;
    const first = eventAt(placed, 0);
    if (bar === 0 && entered && first) {
      joints.push({ exit: entered, from: null, to: first, edge: placed.content + EDGE });
    }
    placed.bar.content.events.forEach(({ exit }, index) => {
      if (exit === null) return;
      const from = eventAt(placed, index);
      const { as } = SIGNS[exit.sign].drawn;
      if (!from || (as !== 'curve' && as !== 'line')) return;
      const next = bars[bar + 1];
      const inBar = eventAt(placed, index + 1);
      const to = exit.leads ? (inBar ?? (next ? eventAt(next, 0) : null)) : null;
      const edge = exit.leads ? placed.right - EDGE : Math.min(placed.right - EDGE, from.x + DANGLING);
      joints.push({ exit, from, to, edge });
    });
  });
  return joints;
}

/** The edges of a head with its dot and accidental. */
export function headEdges({ placed, index, x }: PlacedEvent): {
  readonly left: number;
  readonly right: number;
} {
  const ink = placed.bar.ink[index] ?? [];
  const right = boxOf(ink.filter(({ role }) => role === 'note' || role === 'dot'))?.right;
  const left = boxOf(ink.filter(({ role }) => role === 'note' || role === 'accidental'))?.left;
  return { left: x + (left ?? -HALF_HEAD), right: x + (right ?? HALF_HEAD) };
}
