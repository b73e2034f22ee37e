import { barTicks, beatTicks, type Metre, ticks } from '../base';
import { swingRatio } from '../feel';
import type { LineSheet } from '../lesson';
import { EVERY_BEAT, PARTS } from '../playing';
import { bassEvents } from './bass';
import { chordEvents } from './chords';
import { clickEvents, countInEvents } from './click';
import { drumEvents } from './drums';
import { humanise } from './humanise';
import type { PerformanceOptions } from './options';
import { type PlannedBar, planBars } from './plan';
import type { Performance, PerformanceEvent } from './types';

/** By time, then in the order of the score. */
const inOrder = (one: PerformanceEvent, other: PerformanceEvent): number =>
  one.start - other.start || PARTS.indexOf(one.part) - PARTS.indexOf(other.part);

/** The metre that the count-in counts: that of the first full bar. */
function openingMetre(sheet: LineSheet, { passage }: PerformanceOptions): Metre {
  const opening = sheet.chart.bars.find((bar) => !bar.pickup && bar.number >= (passage?.first ?? 1));
  return opening?.metre ?? sheet.metre;
}

/** A pickup completes a bar that the count-in has begun. */
function countInTicks(sheet: LineSheet, { countIn, passage }: PerformanceOptions, metre: Metre): number {
  const first = sheet.chart.bars[0];
  const begins = first !== undefined && (passage === null || passage.first <= first.number);
  const pickup = countIn > 0 && begins && first.pickup;
  const begun = pickup ? Math.max(0, barTicks(metre) - barTicks(first.metre)) : 0;
  return countIn * barTicks(metre) + begun;
}

/**
 * Where a round begins that is played again: behind a pickup, which leads into the first round only. A last bar that has
 * all its beats is followed by the first whole bar, so that the beat goes on (common practice, no source).
 */
function roundBegin(planned: readonly PlannedBar[], countIn: number): number {
  const [first, second] = planned;
  return first?.sheetBar?.written.pickup === true && second !== undefined ? second.start : countIn;
}

/**
 * Everything that sounds when a line is played once through: count-in, bass, drums, chops, organ and click, all
 * of them whatever is switched on, so that a part can be switched while it plays.
 */
export function buildPerformance(sheet: LineSheet, options: PerformanceOptions): Performance {
  const ratio = swingRatio(sheet.feel, options.tempo);
  const metre = openingMetre(sheet, options);
  const countIn = countInTicks(sheet, options, metre);
  const beat = beatTicks(sheet.metre);
  const ticksOf = (seconds: number): number => Math.round((seconds * options.tempo * beat) / 60);
  const planned = planBars(sheet, options, countIn);
  const last = planned.at(-1);
  const played: readonly PerformanceEvent[] = [
    ...bassEvents(planned, ratio, sheet.bars, sheet.feel.bassTouch.muted),
    ...drumEvents(planned, sheet.chart, sheet.feel, ratio, options.drumSeed ?? null),
    ...chordEvents(planned, sheet.feel, ratio, ticksOf),
    ...clickEvents(planned, options.click ?? EVERY_BEAT, ratio),
  ];
  const begin = options.goesRound === true ? roundBegin(planned, countIn) : countIn;
  const humanised =
    options.humaniseSeed === undefined ? played : humanise(played, options.humaniseSeed, countIn, begin);
  const events = [...countInEvents(metre, countIn, options.tempo), ...humanised].sort(inOrder);
  return {
    tempo: options.tempo,
    beat,
    countIn: ticks(begin),
    end: ticks(last === undefined ? countIn : last.start + last.duration),
    bars: planned.flatMap(({ bar, start, duration }) =>
      bar === null ? [] : [{ bar, start: ticks(start), duration: ticks(duration) }],
    ),
    events,
  };
}
