import { type LineNote, midiOf, ticks } from '../../base';
import type { HandGauge } from '../../fretboard';
import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import type { LineNotes } from '../types';
import { FEATURES, type Feature, featuresOf } from './features';
import { WEIGHTS } from './weights';

const NAMES = Object.keys(FEATURES) as readonly Feature[];
const WEIGHED = NAMES.map((name) => ({ name, weight: WEIGHTS[name].weight }));

/** What a line costs by what can be counted in it, whoever wrote it. */
export function featureCost(model: LineModel, heard: HeardLine): number {
  const features = featuresOf(model, heard);
  let cost = 0;
  for (const { name, weight } of WEIGHED) cost += features[name] * weight;
  return cost;
}

/**
 * What the hand's cost of a note does beside the features, so that a shift in eight bars weighs an eleventh of a mark
 * (hand-set), and that of a line it cannot play.
 */
const HAND = 85;
const UNPLAYABLE = 70;

/** What a line costs the hand, by note. */
export function handCost(model: LineModel, gauge: HandGauge, bars: LineNotes): number {
  let at = 0;
  const notes = bars.flatMap((bar, index) => {
    const begins = at;
    at += model.bars[index]?.ticks ?? 0;
    return bar.map((note: LineNote) => ({
      start: ticks(begins + note.start),
      duration: note.duration,
      midi: midiOf(note.pitch),
    }));
  });
  if (notes.length === 0) return 0;
  const { cost } = gauge.after(gauge.start, notes);
  return Number.isFinite(cost) ? (cost / notes.length) * HAND : UNPLAYABLE;
}
