import { barTicks, beatTicks, ticks } from '../base';
import { swingRatio } from '../feel';
import type { LineSheet } from '../lesson';
import { bassEvents } from './bass';
import { chordEvents } from './chords';
import { clickEvents, countInEvents } from './click';
import { drumEvents } from './drums';
import { humanise } from './humanise';
import type { ClickPlan, PerformanceOptions } from './options';
import { planBars } from './plan';
import { PARTS, type Performance, type PerformanceEvent } from './types';

const EVERY_BEAT: ClickPlan = { beats: 'every beat', dropOut: null };

/** By time, then in the order of the score. */
const inOrder = (one: PerformanceEvent, other: PerformanceEvent): number =>
  one.start - other.start || PARTS.indexOf(one.part) - PARTS.indexOf(other.part);

/**
 * Everything that sounds when a line is played once through: count-in, bass, drums, chops, organ and click, all
 * of them whatever is switched on, so that a part can be switched while it plays.
 */
export function buildPerformance(sheet: LineSheet, options: PerformanceOptions): Performance {
  const ratio = swingRatio(sheet.feel, options.tempo);
  const first = sheet.bars[(options.passage?.first ?? 1) - 1]?.written.metre ?? sheet.metre;
  const countIn = options.countIn * barTicks(first);
  const planned = planBars(sheet, options, countIn);
  const last = planned.at(-1);
  const played: readonly PerformanceEvent[] = [
    ...bassEvents(planned, ratio),
    ...drumEvents(planned, sheet.chart, sheet.feel, ratio),
    ...chordEvents(planned, sheet.feel, ratio),
    ...clickEvents(planned, options.click ?? EVERY_BEAT, ratio),
  ];
  const humanised =
    options.humaniseSeed === undefined ? played : humanise(played, options.humaniseSeed, countIn);
  const events = [...countInEvents(first, options.countIn, options.tempo), ...humanised].sort(inOrder);
  return {
    tempo: options.tempo,
    beat: beatTicks(sheet.metre),
    countIn: ticks(countIn),
    end: ticks(last === undefined ? countIn : last.start + last.duration),
    bars: planned.flatMap(({ bar, start, duration }) =>
      bar === null ? [] : [{ bar, start: ticks(start), duration: ticks(duration) }],
    ),
    events,
  };
}
