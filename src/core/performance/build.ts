import { barTicks, beatTicks, type Metre, ticks } from '../base';
import { swingRatio } from '../feel';
import type { LineSheet } from '../lesson';
import { EVERY_BEAT, PARTS } from '../playing';
import { bassEvents } from './bass';
import { chordEvents } from './chords';
import { clickEvents, countInEvents } from './click';
import { drumEvents, introOfDrums } from './drums';
import { endingBar, endingOfBass, endingOfDrums, introBar } from './form';
import { humanise, latenessOf } from './humanise';
import type { PerformanceOptions } from './options';
import { type PlannedBar, planBars } from './plan';
import type { Performance, PerformanceEvent } from './types';

/** By time, then in the order of the score. */
const inOrder = (one: PerformanceEvent, other: PerformanceEvent): number =>
  one.start - other.start || PARTS.indexOf(one.part) - PARTS.indexOf(other.part);

/** The metre that the count-in counts: that of the first full bar. */
function openingMetre(sheet: LineSheet, options: PerformanceOptions): Metre {
  const { passage, from = 0 } = options;
  const [first] = from > 0 ? planBars(sheet, options, 0) : [];
  if (first !== undefined) return first.metre;
  const opening = sheet.chart.bars.find((bar) => !bar.pickup && bar.number >= (passage?.first ?? 1));
  return opening?.metre ?? sheet.metre;
}

/** How long is counted in, and how long the intro is. A pickup completes a bar that one of them has begun. */
function beforeTicks(sheet: LineSheet, options: PerformanceOptions, metre: Metre) {
  const { countIn, passage, intro = false, from = 0 } = options;
  const first = sheet.chart.bars[0];
  const begins = first !== undefined && from === 0 && (passage === null || passage.first <= first.number);
  const pickup = (countIn > 0 || intro) && begins && first.pickup;
  const begun = pickup ? Math.max(0, barTicks(metre) - barTicks(first.metre)) : 0;
  return {
    counted: countIn * barTicks(metre) + (intro ? 0 : begun),
    intro: intro ? barTicks(metre) + begun : 0,
  };
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
  const before = beforeTicks(sheet, options, metre);
  const countIn = before.counted + before.intro;
  const beat = beatTicks(sheet.metre);
  const ticksOf = (seconds: number): number => Math.round((seconds * options.tempo * beat) / 60);
  const planned = planBars(sheet, options, countIn);
  const intro = introBar(planned[0], metre, before.counted, before.intro);
  const endings = options.ending === true ? endingBar(planned, sheet) : [];
  const [ending] = endings;
  const last = ending ?? planned.at(-1);
  const click = options.click ?? EVERY_BEAT;
  const bass = bassEvents(planned, ratio, sheet.bars, sheet.feel.bassTouch.muted);
  const drummer = { seed: options.drumSeed ?? null, way: options.drumWay ?? null };
  const begin = options.goesRound === true ? roundBegin(planned, countIn) : countIn;
  const played = (events: readonly PerformanceEvent[], first: number, round = first) =>
    options.humaniseSeed === undefined
      ? events
      : humanise(events, {
          seed: options.humaniseSeed,
          first,
          round,
          late: (part) => ticksOf(latenessOf(part, sheet.feel)),
        });
  const events = [
    ...countInEvents(metre, before.counted, options.tempo),
    ...played(
      [
        ...introOfDrums(intro[0], sheet.feel, ratio, drummer),
        ...chordEvents(intro, sheet.feel, ratio, ticksOf),
        ...clickEvents(intro, click, ratio),
      ],
      before.counted,
    ),
    ...played(
      [
        ...bass,
        ...endingOfBass(ending, sheet, bass),
        ...drumEvents(planned, sheet.chart, sheet.feel, ratio, drummer),
        ...endingOfDrums(ending, sheet.feel),
        ...chordEvents([...planned, ...endings], sheet.feel, ratio, ticksOf),
        ...clickEvents(planned, click, ratio),
      ],
      countIn,
      begin,
    ),
  ].sort(inOrder);
  return {
    tempo: options.tempo,
    beat,
    countIn: ticks(begin),
    intro: ticks(before.intro + begin - countIn),
    ending: ending === undefined ? null : ticks(ending.start),
    end: ticks(last === undefined ? countIn : last.start + last.duration),
    bars: planned.flatMap(({ bar, start, duration, bassPlays }) =>
      bar === null
        ? []
        : [{ bar, start: ticks(start), duration: ticks(duration), ...(bassPlays ? {} : { answer: true }) }],
    ),
    events,
  };
}
