import { type LineNote, midiOf, ticks } from '../../base';
import { fingerLine, type HandGauge, playingFindings, ticksPerSecond } from '../../fretboard';
import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import type { LineNotes } from '../types';
import { FEATURES, type Feature, featuresOf } from './features';
import { playingHandOf } from './stands';
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

/** The notes of a line for the hand, from the beginning of the line on, and the bar of each. */
function forTheHand(model: LineModel, bars: LineNotes) {
  let at = 0;
  return bars.flatMap((bar, index) => {
    const begins = at;
    at += model.bars[index]?.ticks ?? 0;
    return bar.map((note: LineNote) => ({
      start: ticks(begins + note.start),
      duration: note.duration,
      midi: midiOf(note.pitch),
      bar: index,
    }));
  });
}

/** What a line costs the hand, by note. */
export function handCost(model: LineModel, gauge: HandGauge, bars: LineNotes): number {
  const notes = forTheHand(model, bars);
  if (notes.length === 0) return 0;
  const { cost } = gauge.after(gauge.start, notes);
  return Number.isFinite(cost) ? (cost / notes.length) * HAND : UNPLAYABLE;
}

/**
 * Bars in which the hand has no time for a shift or does not reach, as the lesson check would say of the line played
 * round and round.
 */
export function hurriedBars(model: LineModel, bars: LineNotes): readonly number[] {
  const { instrument, tempo, chart, feel } = model.request;
  const notes = forTheHand(model, bars);
  const hand = playingHandOf(model);
  const context = {
    ticksPerSecond: ticksPerSecond(tempo, chart.metre),
    loop: ticks(model.bars.reduce((sum, bar) => sum + bar.ticks, 0)),
    muted: feel.bassTouch.muted,
  };
  const fingering = fingerLine(notes, instrument, hand, context);
  const found = playingFindings({ notes, fingering, instrument, hand, context, limitOf: '' });
  return found.flatMap(({ kind, note }) =>
    kind === 'shift too far' || kind === 'stretch too wide' ? (notes[note]?.bar ?? []) : [],
  );
}
