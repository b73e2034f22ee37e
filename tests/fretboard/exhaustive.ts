import type { Fret } from '../../src/core/base';
import type { HandSettings, Instrument, LineContext, NoteToFinger } from '../../src/core/fretboard';
import { COST, STOLEN, urgency } from '../../src/core/fretboard/costs';
import { type State, statesOf } from '../../src/core/fretboard/states';
import { jointCost, plainCost, urgentCost } from '../../src/core/fretboard/transition';

/**
 * Every combination of ways to play a short line with its cost, one after the other without any search: slow,
 * and beyond doubt.
 */
export function visitAll(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
  found: (ways: readonly State[], cost: number) => void,
): void {
  const options = notes.map((note) => statesOf(note, instrument, hand, positionAt(note, context)));
  const step = (before: number, from: State, after: number, to: State, later: number): number => {
    const [one, other] = [notes[before], notes[after]];
    if (one === undefined || other === undefined) throw new Error('no such note');
    const sinceOnset = other.start + later - one.start;
    const free = from.finger === 0 ? sinceOnset : sinceOnset - (1 - STOLEN) * one.duration;
    const repeats = one.midi === other.midi;
    const rings = context.muted === true && from.finger === 0 && sinceOnset > one.duration;
    return (
      plainCost(from, to, repeats, hand.reach) +
      jointCost(from, to, sinceOnset === one.duration ? (one.joined ?? null) : null) +
      urgentCost(from, to, repeats, hand.comfortableSpan) * urgency(free / context.ticksPerSecond) +
      (rings ? COST.openRings : 0)
    );
  };
  const chosen: State[] = [];
  const visit = (index: number, soFar: number): void => {
    const [first, from] = [chosen[0], chosen[index - 1]];
    const ways = options[index];
    if (ways === undefined) {
      const closed = context.loop !== null && first !== undefined && from !== undefined;
      found(chosen, soFar + (closed ? step(index - 1, from, 0, first, context.loop) : 0));
      return;
    }
    for (const way of ways) {
      const cost = from === undefined ? 0 : step(index - 1, from, index, way, 0);
      chosen[index] = way;
      visit(index + 1, soFar + cost + way.own);
    }
    chosen.length = index;
  };
  visit(0, 0);
}

const positionAt = ({ start }: NoteToFinger, { positions = [] }: LineContext): Fret | null =>
  positions.findLast((pin) => pin.start <= start && start < pin.end)?.position ?? null;

export function leastCost(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): number {
  let least = Number.POSITIVE_INFINITY;
  visitAll(notes, instrument, hand, context, (_, cost) => {
    least = Math.min(least, cost);
  });
  return least;
}
