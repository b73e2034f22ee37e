import { createHandModel, hasteBetween, type Layer } from './model';
import { advance } from './path';
import type { HandSettings, Instrument, NoteToFinger } from './types';

/** How the hand may stand after some notes, and what each way has cost; opaque but for the cost. */
export interface HandOutlook {
  /** Cost of the cheapest way so far, in the unit of `Fingering.cost`; Infinity after a note off the neck. */
  readonly cost: number;
  readonly last: { readonly note: NoteToFinger; readonly layer: Layer; readonly costs: Float64Array } | null;
}

/**
 * Tells a composer what candidate notes cost the hand: exactly what the fingering search will find later, note
 * by note, because it carries every way of holding the last note along.
 */
export interface HandGauge {
  /** Before the first note: the hand may stand anywhere. */
  readonly start: HandOutlook;
  /**
   * The outlook after more notes; what they cost is the difference of the two costs. Outlooks do not change,
   * so one can be extended by many candidates.
   * @param notes in the order of their starts, all after the notes that led to `before`
   */
  after(before: HandOutlook, notes: readonly NoteToFinger[]): HandOutlook;
}

export function createHandGauge(
  instrument: Instrument,
  hand: HandSettings,
  ticksPerSecond: number,
): HandGauge {
  const model = createHandModel(instrument, hand);
  return {
    start: { cost: 0, last: null },
    after: (before, notes) => {
      let { last } = before;
      for (const note of notes) {
        const layer = model.layerOf(note);
        const costs =
          last === null
            ? layer.own
            : advance(
                model,
                last.layer,
                last.costs,
                {
                  samePitch: note.midi === last.note.midi,
                  haste: hasteBetween(last.note, note.start, ticksPerSecond),
                },
                layer,
              );
        last = { note, layer, costs };
      }
      if (last === null) return before;
      return {
        cost: last.costs.reduce((least, cost) => Math.min(least, cost), Number.POSITIVE_INFINITY),
        last,
      };
    },
  };
}
