import type { BarBox, SystemLayout } from '../../../score';

/** How near to a note it is the note that is meant, in CSS pixels. */
export const NEAR_NOTE = 13;

/** Where a tick of a bar stands, in CSS pixels from the system's left edge: between signs, in proportion. */
export function xOfTick(box: BarBox, tick: number): number {
  const { positions } = box;
  const behind = positions.findIndex((each) => each.tick >= tick);
  const next = positions[behind];
  const before = positions[behind - 1];
  if (next === undefined) return box.x + box.width - 6;
  if (next.tick === tick || before === undefined) return next.x;
  return before.x + ((next.x - before.x) * (tick - before.tick)) / (next.tick - before.tick);
}

/** Of some ticks, the one that stands nearest to a place. */
export const nearestTick = (box: BarBox, ticks: readonly number[], x: number): number =>
  ticks.reduce(
    (best, tick) => (Math.abs(xOfTick(box, tick) - x) < Math.abs(xOfTick(box, best) - x) ? tick : best),
    ticks[0] ?? 0,
  );

/** D2 as it sounds stands on the middle line of the bass staff: two octaves and a step above C0. */
const MIDDLE_LINE = 15;

/** Height of a staff step in CSS pixels. */
export const stepHeight = ({ staff }: SystemLayout): number => (staff.bottom - staff.top) / 8;

/** The staff step (from C0, as it sounds) at a height of a system. */
export const stepAt = (system: SystemLayout, y: number): number =>
  MIDDLE_LINE + Math.round(((system.staff.top + system.staff.bottom) / 2 - y) / stepHeight(system));

/** Whether a height lies on the staff or on the tab, a little around them counted. */
export function zoneAt({ staff, tab }: SystemLayout, y: number): 'staff' | 'tab' | null {
  const middle = (staff.bottom + tab.top) / 2;
  const reach = (staff.bottom - staff.top) * 0.9;
  if (y < staff.top - reach || y > tab.bottom + reach / 2) return null;
  return y < middle ? 'staff' : 'tab';
}

/** The string at a height of the tab, from 1 at its top. */
export function stringAt({ tab }: SystemLayout, y: number, strings: number): number {
  const space = (tab.bottom - tab.top) / Math.max(1, strings - 1);
  return Math.min(strings, Math.max(1, Math.round((y - tab.top) / space) + 1));
}
