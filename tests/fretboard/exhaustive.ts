import type { HandSettings, Instrument, LineContext, NoteToFinger } from '../../src/core/fretboard';
import { STOLEN, urgency } from '../../src/core/fretboard/costs';
import { type State, statesOf } from '../../src/core/fretboard/states';
import { plainCost, urgentCost } from '../../src/core/fretboard/transition';

/**
 * The least cost over every combination of ways to play a short line, tried one after the other without any
 * search: slow, and beyond doubt.
 */
export function leastCost(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): number {
  const options = notes.map((note) => statesOf(note, instrument, hand));
  const step = (before: number, from: State, after: number, to: State, later: number): number => {
    const [one, other] = [notes[before], notes[after]];
    if (one === undefined || other === undefined) throw new Error('no such note');
    const sinceOnset = other.start + later - one.start;
    const free = from.finger === 0 ? sinceOnset : sinceOnset - (1 - STOLEN) * one.duration;
    const repeats = one.midi === other.midi;
    return (
      plainCost(from, to, repeats, hand.reach) +
      urgentCost(from, to, repeats, hand.comfortableSpan) * urgency(free / context.ticksPerSecond)
    );
  };
  let least = Number.POSITIVE_INFINITY;
  const visit = (index: number, soFar: number, first: State | null, from: State | null): void => {
    const ways = options[index];
    if (ways === undefined) {
      const seam =
        context.loop === null || first === null || from === null
          ? 0
          : step(index - 1, from, 0, first, context.loop);
      least = Math.min(least, soFar + seam);
      return;
    }
    for (const way of ways) {
      const cost = from === null ? 0 : step(index - 1, from, index, way, 0);
      visit(index + 1, soFar + cost + way.own, first ?? way, way);
    }
  };
  visit(0, 0, null, null);
  return least;
}
