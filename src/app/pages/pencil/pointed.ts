import { stringNumber } from '../../../core/base';
import {
  type Desk,
  deskOf,
  type Gesture,
  goTo,
  inTurn,
  notesIn,
  ontoString,
  selectTo,
  stopsIn,
  writeOnStaff,
} from '../../../core/writing';
import type { Session } from '../../state';
import type { PointedAt } from '../score';
import { perform, workNow } from './perform';
import { NEAR_NOTE, nearestTick, stepAt, stringAt, xOfTick, zoneAt } from './place';

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

/** Goes on in a bar that is not the one at hand: by the keyboard at its beginning, else where it was pointed at. */
export function pointAt(session: Session, bar: number, at: PointedAt | null): void {
  const work = workNow(session);
  const desk = work && deskOf(work.lesson, work.pencil);
  if (desk !== null) perform(session, at === null ? goTo({ bar, tick: 0 }) : pointed(desk, at));
}
