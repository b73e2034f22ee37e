import { createHandModel, hasteBetween, jointOf, type Layer, type Pace } from './model';
import { advance, type Step } from './path';
import type { HandSettings, Instrument, NoteToFinger } from './types';

interface LastNote {
  readonly note: NoteToFinger;
  readonly layer: Layer;
  /** Cheapest cost up to every way of the note. */
  readonly costs: Float64Array;
}

/** How the hand may stand after some notes, and what each way has cost; opaque but for the cost. */
export interface HandOutlook {
  /** Cost of the cheapest way so far, in the unit of `Fingering.cost`; Infinity after a note off the neck. */
  readonly cost: number;
  readonly last: LastNote | null;
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

/** @param muted the style wants silence in its rests, as in `LineContext` */
export function createHandGauge(
  instrument: Instrument,
  hand: HandSettings,
  ticksPerSecond: number,
  muted = false,
): HandGauge {
  const pace: Pace = { ticksPerSecond, muted };
  const model = createHandModel(instrument, hand);
  const stepFrom = (last: LastNote, note: NoteToFinger, layer: Layer): Step => ({
    link: model.linkOf(last.layer, layer, jointOf(last.note, note.start)),
    haste: hasteBetween(last.note, note.start, pace),
  });
  return {
    start: { cost: 0, last: null },
    after: (before, notes) => {
      let { last } = before;
      for (const note of notes) {
        const layer = model.layerOf(note, null);
        const costs = last === null ? layer.own : advance(last.costs, stepFrom(last, note, layer), layer.own);
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
