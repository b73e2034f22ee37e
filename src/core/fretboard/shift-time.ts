import type { Fret } from '../base';
import { type FingeredLine, type Held, onsetGap } from './fingered-line';
import { handSpan } from './neck';

/** How fast a hand moves along the neck and still lands, in millimetres a second (common practice, no source). */
const HAND_SPEED = 1000;
/** Share of a fretted note that may go to the move at worst: half as long a note is still the same note. */
export const GIVEN_UP = 0.5;

/** A shift of the hand with the time that it needs and the time that it is given, in ticks. */
export interface ShiftTime {
  readonly from: Fret;
  readonly to: Fret;
  readonly needed: number;
  readonly given: number;
  /** From the start of the note before to the start of the note after. */
  readonly gap: number;
}

/** The shift between two successive notes; null where the hand stays. */
export function shiftTime(line: FingeredLine, before: Held, after: Held): ShiftTime | null {
  const [from, to] = [before.at.position, after.at.position];
  if (from === to) return null;
  const gap = onsetGap(line, before.note, after.note);
  // During an open string the hand is free from its start.
  const held = before.at.finger === 0 ? 0 : before.note.duration * (1 - GIVEN_UP);
  const distance = handSpan(from, to, line.instrument.scaleLength);
  return { from, to, needed: (distance / HAND_SPEED) * line.context.ticksPerSecond, given: gap - held, gap };
}
