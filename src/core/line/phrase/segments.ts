import { barTicks, beatGroups, beatsInBar, beatTicks, isCompound, isUneven, type Metre } from '../../base';
import type { Stretch } from '../harmony';
import { type BarModel, changesAtStart, changesBetween, type LineModel } from '../model';
import { type Ladder, ladderOf } from './ladder';

/** What the search decides at once: one chord in one bar, or a part of it where the book has no bar of its length. */
export interface Segment {
  readonly index: number;
  readonly bar: BarModel;
  /** Ticks from the beginning of the bar. */
  readonly start: number;
  readonly end: number;
  readonly beats: number;
  /** Ticks of a beat of the book: of the bar's own, or of its half where that is a half note. */
  readonly unit: number;
  readonly stretch: Stretch | null;
  readonly ladder: Ladder | null;
  /** A bar of as many beats as the book's. */
  readonly whole: boolean;
  /** The first or the second half of a bar with several chords. */
  readonly half: 'first' | 'second' | null;
  /** Another chord sounded before, and another comes. */
  readonly fresh: boolean;
  readonly changes: boolean;
  readonly opensSection: boolean;
  /** The notes are given: a kept bar. */
  readonly kept: boolean;
}

/**
 * Lengths in beats that a stretch is cut into: twos that begin on an even beat of their group, else ones, the long beat
 * of an uneven metre whole; what is left over last.
 */
function partsOf(from: number, beats: number, metre: Metre): readonly number[] {
  const parts: number[] = [];
  const [group = 0, second] = beatGroups(metre);
  const long = isUneven(metre) ? beatsInBar(metre) - 1 : null;
  let [at, left] = [from, beats];
  while (left > 0) {
    const place = second !== undefined && at >= group ? at - group : at;
    const whole = second === undefined || at >= group || at + 2 <= group;
    const part =
      at === long && left === LONG ? LONG : left >= 2 && whole && place % 2 === 0 ? 2 : Math.min(1, left);
    parts.push(part);
    at += part;
    left -= part;
  }
  return parts;
}

/** Beats of the long beat of an uneven metre. */
const LONG = 1.5;

interface Part {
  readonly start: number;
  readonly end: number;
  readonly stretch: Stretch;
}

/**
 * Ticks of a beat as the book counts: in 2/2, phrases in four quarters go on in quarters, and three eighths before a bar
 * of 6/8 are one of its beats.
 */
function unitOf(bar: BarModel, metre: Metre): number {
  if (bar.metre.unit === 2 && metre.unit === 4) return bar.beat / 2;
  return bar.metre.unit === 8 && isCompound(metre) ? Math.max(bar.beat, beatTicks(metre)) : bar.beat;
}

/** Whether a bar has as many beats as a bar of the book. */
export const fillsBar = (bar: BarModel, metre: Metre): boolean =>
  bar.ticks / unitOf(bar, metre) === barTicks(metre) / beatTicks(metre);

function partsOfBar(bar: BarModel, metre: Metre): readonly Part[] {
  const [only] = bar.stretches;
  const unit = unitOf(bar, metre);
  if (only && bar.stretches.length === 1 && (fillsBar(bar, metre) || !only.chord))
    return [{ start: 0, end: bar.ticks, stretch: only }];
  return bar.stretches.flatMap((stretch): Part[] => {
    if (!stretch.chord) return [{ start: stretch.start, end: stretch.end, stretch }];
    let at = stretch.start;
    return partsOf(stretch.start / unit, (stretch.end - stretch.start) / unit, bar.metre).map((beats) => {
      const part = { start: at, end: at + beats * unit, stretch };
      at = part.end;
      return part;
    });
  });
}

/**
 * The segments of a chart in the order of its bars.
 * @param metre of the book
 * @param kept by bar: whether its notes are given
 */
export function segmentsOf(model: LineModel, metre: Metre, kept: readonly boolean[]): readonly Segment[] {
  const segments: Segment[] = [];
  for (const bar of model.bars)
    segments.push(...segmentsIn(model, metre, bar, kept[bar.index] === true, segments.length));
  return segments;
}

/**
 * The segments of one bar.
 * @param kept its notes are given
 * @param index of its first segment
 */
export function segmentsIn(
  model: LineModel,
  metre: Metre,
  bar: BarModel,
  kept: boolean,
  index: number,
): readonly Segment[] {
  const fresh = bar.before.length === 0 || changesAtStart(model, bar);
  const goesOver = bar.after.some((other) => {
    const next = model.bars[other];
    return next !== undefined && changesBetween(bar, next);
  });
  const [whole] = bar.stretches;
  const parts: readonly Part[] =
    kept && whole ? [{ start: 0, end: bar.ticks, stretch: whole }] : partsOfBar(bar, metre);
  return parts.map((part, place): Segment => {
    const before = parts[place - 1];
    const next = parts[place + 1];
    const middle = bar.ticks / 2;
    return {
      index: index + place,
      bar,
      ...part,
      beats: (part.end - part.start) / unitOf(bar, metre),
      unit: unitOf(bar, metre),
      ladder: ladderOf(part.stretch),
      whole: part.start === 0 && part.end === bar.ticks && fillsBar(bar, metre),
      half: part.end <= middle ? 'first' : part.start >= middle ? 'second' : null,
      fresh: before ? before.stretch.label !== part.stretch.label : fresh,
      changes: next ? next.stretch.label !== part.stretch.label : goesOver,
      opensSection: bar.opensSection && place === 0,
      kept,
    };
  });
}
