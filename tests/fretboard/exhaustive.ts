import type { HandSettings, Instrument, LineContext, NoteToFinger } from '../../src/core/fretboard';
import { STOLEN, urgency } from '../../src/core/fretboard/costs';
import { type State, statesOf } from '../../src/core/fretboard/states';
import { plainCost, urgentCost } from '../../src/core/fretboard/transition';

/** The cost of one whole way to play a line, added up note by note, without any search. */
function costOf(
  notes: readonly NoteToFinger[],
  ways: readonly State[],
  hand: HandSettings,
  context: LineContext,
): number {
  const between = (one: number, other: number, later: number): number => {
    const [before, after, from, to] = [notes[one], notes[other], ways[one], ways[other]];
    if (before === undefined || after === undefined || from === undefined || to === undefined) return 0;
    const onset = after.start + later;
    const free =
      from.finger === 0
        ? onset - before.start
        : onset - before.start - before.duration + STOLEN * before.duration;
    const repeats = before.midi === after.midi;
    return (
      plainCost(from, to, repeats, hand.reach) +
      urgentCost(from, to, repeats, hand.comfortableSpan) * urgency(free / context.ticksPerSecond)
    );
  };
  const own = ways.reduce((sum, way) => sum + way.own, 0);
  const steps = ways.reduce((sum, _, index) => sum + (index === 0 ? 0 : between(index - 1, index, 0)), 0);
  const seam = context.loop === null ? 0 : between(notes.length - 1, 0, context.loop);
  return own + steps + seam;
}

/** The least cost over every combination of ways: slow, and beyond doubt. */
export function leastCost(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): number {
  const options = notes.map((note) => statesOf(note, instrument, hand));
  let least = Number.POSITIVE_INFINITY;
  const visit = (chosen: readonly State[]): void => {
    const next = options[chosen.length];
    if (next === undefined) {
      least = Math.min(least, costOf(notes, chosen, hand, context));
      return;
    }
    for (const way of next) visit([...chosen, way]);
  };
  visit([]);
  return least;
}
