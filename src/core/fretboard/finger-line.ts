import { heldAlike } from './equal-bars';
import { prepareLine, solve, toFingering } from './line';
import type { Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';

/**
 * String, fret and finger of every note: the cheapest way through the whole line by the costs of `COST`, exact
 * by dynamic programming, in time linear in the number of notes. In a loop the way back to the first note
 * counts too.
 * Where the context gives the bars, equal ones are fingered alike, so that what is learned in one is played in all.
 * @param notes in the order of their starts
 */
export function fingerLine(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): Fingering {
  const line = prepareLine(notes, instrument, hand, context);
  const free = solve(line);
  const own = heldAlike(line, free, context);
  if (own === null) return toFingering(line, free);
  const held = solve(line, own);
  return toFingering(line, Number.isFinite(held.cost) ? held : free);
}
