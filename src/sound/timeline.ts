import { type Performance, type PlayPlace, type PlayStep, playedBarAt, tickAt } from '../core/performance';
import { sampleAt } from './synthesis/score';
import type { Segment } from './synthesis/segment';
import type { PlayPosition } from './types';

/** A segment at its place in the device's time, counted in whole samples. */
export interface Scheduled {
  /** Index into the steps of the request it belongs to. */
  readonly step: number;
  readonly performance: Performance;
  readonly rounds: PlayStep['rounds'];
  /** Rounds of the step that were over before the segment began. */
  readonly firstRound: number;
  /** Where in all that is played the step begins. */
  readonly begins: PlayPlace;
  /** The tick at which the performance was entered. */
  readonly entered: number;
  readonly segment: Pick<Segment, 'sampleRate' | 'begin' | 'roundLength' | 'total'>;
  readonly start: number;
  /** The sample after its last; null when it never ends by itself. */
  readonly end: number | null;
}

/** Samples into the first round (negative in the count-in), rounds running on. */
const elapsed = (scheduled: Scheduled, sample: number): number =>
  sample - scheduled.start + scheduled.segment.begin;

/** What is heard of the segment at a sample of the device's time. */
export function positionIn(scheduled: Scheduled, sample: number): PlayPosition {
  const { performance, segment } = scheduled;
  const passed = elapsed(scheduled, sample);
  const round = passed < 0 || segment.roundLength <= 0 ? 0 : Math.floor(passed / segment.roundLength);
  const within = passed - round * segment.roundLength;
  const tick = Math.max(0, performance.countIn + tickAt(performance, within / segment.sampleRate));
  // A played bar begins on a whole sample, which may lie a fraction of a tick before the bar's own tick.
  const played = playedBarAt(performance, tick + tickAt(performance, 0.5 / segment.sampleRate));
  return {
    performance,
    tick,
    playedBar: played?.index ?? null,
    bar: played?.bar.bar ?? null,
    place: placeIn(scheduled, round, played?.index ?? 0),
  };
}

/** Whether it plays the rest of a round that is begun in its middle. */
export const isRest = ({ begins, firstRound }: Pick<Scheduled, 'begins' | 'firstRound'>): boolean =>
  firstRound === 0 && begins.playedBar > 0;

function placeIn(scheduled: Scheduled, round: number, playedBar: number): PlayPlace {
  const { begins, firstRound } = scheduled;
  const skipped = isRest(scheduled) ? begins.playedBar : 0;
  return { rung: begins.rung, round: begins.round + firstRound + round, playedBar: skipped + playedBar };
}

/** An end of a round of the segment, the last one excepted. */
export interface RoundEnd {
  /** In the device's samples. */
  readonly sample: number;
  /** Rounds of the segment that are over then, and of the whole step. */
  readonly rounds: number;
  readonly ofStep: number;
}

/** The first end of a round at or after a sample of the device's time that others follow; null where none does. */
export function nextRoundEnd(scheduled: Scheduled, sample: number): RoundEnd | null {
  const { roundLength, begin } = scheduled.segment;
  if (roundLength <= 0) return null;
  const rounds = Math.max(1, Math.ceil(elapsed(scheduled, sample) / roundLength));
  if (scheduled.rounds !== 'endless' && rounds >= scheduled.rounds) return null;
  return {
    sample: scheduled.start - begin + rounds * roundLength,
    rounds,
    ofStep: scheduled.firstRound + rounds,
  };
}

/** A bar line to come, at which one performance can give way to another. */
export interface BarLine {
  /** In the device's samples. */
  readonly sample: number;
  /** In the performance that is left, with the rounds that the segment has finished before. */
  readonly tick: number;
  readonly round: number;
  /** Index of the played bar that would have come next; 0 where a round is over. */
  readonly nextBar: number;
}

/** The first bar line of the segment at or after a sample of the device's time. */
export function nextBarLine(scheduled: Scheduled, sample: number): BarLine {
  const { performance, segment } = scheduled;
  const passed = Math.max(0, elapsed(scheduled, Math.max(sample, scheduled.start)));
  const round = segment.roundLength <= 0 ? 0 : Math.floor(passed / segment.roundLength);
  const within = passed - round * segment.roundLength;
  const ticks = performance.bars.flatMap((bar) => [bar.start, bar.start + bar.duration]);
  const countIn = sampleAt(performance, performance.countIn, segment.sampleRate);
  const tick =
    ticks.find((candidate) => sampleAt(performance, candidate, segment.sampleRate) - countIn >= within) ??
    performance.end;
  const place = sampleAt(performance, tick, segment.sampleRate) - countIn + round * segment.roundLength;
  const begins = performance.bars.findIndex((bar) => bar.start >= performance.countIn);
  const next = performance.bars.findIndex((bar) => bar.start >= tick);
  return {
    sample: scheduled.start - segment.begin + place,
    tick,
    round,
    nextBar: Math.max(0, next < 0 ? begins : next),
  };
}

/**
 * Where a new performance is entered so that it goes on with the bar that would have come next: the same
 * place in the order of playing when both have the same order, else the first time the written bar is played,
 * else the beginning.
 * @param rest - what is left is the rest of a round that was begun in its middle: the whole round comes after it
 */
export function entryTick(
  leaving: Performance,
  nextBar: number,
  entering: Performance,
  rest = false,
): number {
  if (rest && nextBar === 0) return entering.bars[0]?.start ?? entering.countIn;
  const written = leaving.bars[nextBar]?.bar;
  const skipped = rest ? Math.max(0, entering.bars.length - leaving.bars.length) : 0;
  const sameOrder =
    leaving.bars.length + skipped === entering.bars.length &&
    leaving.bars.every((bar, index) => bar.bar === entering.bars[skipped + index]?.bar);
  const bar = sameOrder
    ? entering.bars[skipped + nextBar]
    : entering.bars.find((candidate) => candidate.bar === written);
  return bar?.start ?? entering.countIn;
}
