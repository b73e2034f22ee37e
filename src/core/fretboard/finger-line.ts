import { heldAlike } from './equal-bars';
import { type Line, prepareLine, solve, toFingering } from './line';
import { inOnePlace } from './one-place';
import type { Path } from './path';
import type { Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';

/**
 * String, fret and finger of every note: the cheapest way through the whole line by the costs of `COST`, exact
 * by dynamic programming, in time linear in the number of notes. In a loop the way back to the first note
 * counts too.
 * Where the context gives the bars, a bar has a pitch in one place where that costs little, and equal bars are fingered
 * alike, so that what is learned in one is played in all.
 * @param notes in the order of their starts
 */
export function fingerLine(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): Fingering {
  const prepared = prepareLine(notes, instrument, hand, context);
  const first = solve(prepared);
  const { line, free } = steadied(prepared, first, context);
  const own = heldAlike(line, free, context);
  if (own === null) return toFingering(line, free);
  const held = solve(line, own);
  return toFingering(line, Number.isFinite(held.cost) ? held : free);
}

/** The line with each pitch in one place a bar, where that costs the hand little. */
function steadied(
  line: Line,
  free: Path,
  context: LineContext,
): { readonly line: Line; readonly free: Path } {
  const steady = inOnePlace(line, free, context);
  if (steady === null) return { line, free };
  const path = solve(line, steady.own);
  if (path.cost > steady.most) return { line, free };
  return { line: { ...line, track: { ...line.track, own: steady.own } }, free: path };
}
