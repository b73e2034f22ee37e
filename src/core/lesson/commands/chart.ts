import { barTicks, type Metre } from '../../base';
import { barSignature, type ChartBar, matchBars, parseChart } from '../../chart';
import { freshIds } from '../identity';
import type { Lesson, LineBar, LinePiece } from '../types';
import { changeLine } from './piece';

const isUnknown = (bar: ChartBar): boolean => bar.spans.some((span) => span.harmony.kind === 'unknown');

const fits = (bar: LineBar, written: ChartBar): boolean =>
  bar.notes.every((note) => note.start + note.duration <= barTicks(written.metre));

/**
 * Which old bar belongs to each new one: first by content and order; then a bar whose chord cannot be read just
 * now (half typed) keeps the notes it had, as long as its place between its neighbours is plain.
 */
function followBars(old: readonly LineBar[], written: readonly ChartBar[]): (LineBar | null)[] {
  const matches = matchBars(
    old.map((bar) => bar.harmony),
    written.map(barSignature),
  );
  const result: (LineBar | null)[] = matches.map((index) => (index === null ? null : (old[index] ?? null)));
  let nextFree = 0;
  written.forEach((bar, index) => {
    const match = matches[index] ?? null;
    if (match !== null) {
      nextFree = match + 1;
      return;
    }
    const following = matches.slice(index + 1).find((other) => other !== null) ?? old.length;
    const candidate = old[nextFree];
    if (candidate === undefined || nextFree >= following) {
      return;
    }
    nextFree += 1;
    if (isUnknown(bar) && fits(candidate, bar)) {
      result[index] = candidate;
    }
  });
  return result;
}

/** Takes a parked bar written for the same harmony back into the line, so a slip of the pen costs nothing. */
function takeParked(parked: LineBar[], written: ChartBar): LineBar | null {
  const signature = barSignature(written);
  const index = parked.findIndex((bar) => bar.harmony === signature && fits(bar, written));
  return index < 0 ? null : (parked.splice(index, 1)[0] ?? null);
}

function withChart(lesson: Lesson, piece: LinePiece, chartText: string, metre: Metre): LinePiece {
  const { chart } = parseChart(chartText, metre);
  const followed = followBars(piece.bars, chart.bars);
  const used = new Set(followed);
  const parked = [...piece.parked, ...piece.bars.filter((bar) => !used.has(bar) && bar.notes.length > 0)];
  const fresh = freshIds(lesson);
  const bars = chart.bars.map(
    (written, index): LineBar =>
      followed[index] ??
      takeParked(parked, written) ?? {
        id: fresh('bar'),
        harmony: barSignature(written),
        origin: 'composed',
        kept: false,
        notes: [],
      },
  );
  return { ...piece, chartText, metre, bars, parked };
}

/**
 * Another chart text. Bars whose chords are still there keep their notes, wherever they moved; notes whose bar
 * went away are parked, and come back by themselves when such a bar returns.
 */
export const setChartText = (lesson: Lesson, pieceId: string, chartText: string): Lesson =>
  changeLine(lesson, pieceId, (piece) =>
    chartText === piece.chartText ? piece : withChart(lesson, piece, chartText, piece.metre),
  );

/** Another metre for the whole piece; bars whose notes no longer fit are parked. */
export const setMetre = (lesson: Lesson, pieceId: string, metre: Metre): Lesson =>
  changeLine(lesson, pieceId, (piece) => withChart(lesson, piece, piece.chartText, metre));

/** Throws the parked bars of a piece away. */
export const discardParked = (lesson: Lesson, pieceId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => (piece.parked.length === 0 ? piece : { ...piece, parked: [] }));
