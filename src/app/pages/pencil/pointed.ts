import { stringNumber } from '../../../core/base';
import {
  type Desk,
  type Gesture,
  goTo,
  inTurn,
  notesIn,
  ontoString,
  selectTo,
  stopsIn,
  writeOnStaff,
} from '../../../core/writing';
import type { BarBox, SystemLayout } from '../../../score';
import { NEAR_NOTE, nearestTick, stepAt, stringAt, xOfTick, zoneAt } from './place';

/** A place of a bar that is pointed at, in CSS pixels from the left and upper edge of its system. */
export interface PointedAt {
  readonly box: BarBox;
  readonly system: SystemLayout;
  readonly x: number;
  readonly y: number;
  /** Whether all from the pencil up to there is meant. */
  readonly shift: boolean;
}

/**
 * What pointing at a bar asks for: to select up to there, to write on the staff, to go to a note or onto a string.
 * Where the pencil neither stands nor goes on next, nothing is written: there it only goes.
 */
export function pointed(desk: Desk, { box, system, x, y, shift }: PointedAt): Gesture {
  const { bar } = box;
  const notes = notesIn(desk, bar);
  const near = notes.find(({ start }) => Math.abs(xOfTick(box, start) - x) <= NEAR_NOTE);
  const tick = near?.start ?? nearestTick(box, stopsIn(desk, bar), x);
  const here = goTo({ bar, tick });
  if (shift) return selectTo({ bar, tick });
  const writes = bar === desk.pencil.bar || bar === desk.pencil.next?.bar;
  switch (zoneAt(system, y)) {
    case 'staff':
      return near === undefined && writes ? inTurn(here, writeOnStaff(stepAt(system, y))) : here;
    case 'tab':
      return inTurn(here, ontoString(stringNumber(stringAt(system, y, desk.instrument.openStrings.length))));
    default:
      return here;
  }
}
