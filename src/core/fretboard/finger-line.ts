import { prepareLine, solve, toFingering } from './line';
import type { Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';

/**
 * String, fret and finger of every note: the cheapest way through the whole line by the costs of `COST`, exact
 * by dynamic programming, in time linear in the number of notes. In a loop the way back to the first note
 * counts too.
 * @param notes in the order of their starts
 */
export function fingerLine(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): Fingering {
  const line = prepareLine(notes, instrument, hand, context);
  return toFingering(line, solve(line));
}
