import { transposeChartText } from '../chart';
import { instrumentOf, type Lesson, type LinePiece, readPiece, transposePiece } from '../lesson';
import { type Interval, intervalBetween, intervalBetweenPitches } from '../theory';

const UNISON: Interval = { steps: 0, halfSteps: 0 };

const isUnison = ({ steps, halfSteps }: Interval): boolean => steps === 0 && halfSteps === 0;

/** Both moves one after the other; nothing where they come back to where they began. */
export function together(one: Interval = UNISON, other: Interval = UNISON): Interval | undefined {
  const sum = { steps: one.steps + other.steps, halfSteps: one.halfSteps + other.halfSteps };
  return isUnison(sum) ? undefined : sum;
}

interface Moved {
  readonly moved: Interval;
  readonly instrument: Lesson['instrument'];
  readonly line: LinePiece;
}

/** Lines never change in place; of each the last move is known, since one version is worked on at a time. */
const known = new WeakMap<LinePiece, Moved>();

/** A line of the tune as far away as a version has it; the same object again for the same move. */
export function movedLine(
  line: LinePiece,
  moved: Interval | undefined,
  instrument: Lesson['instrument'],
): LinePiece {
  if (moved === undefined) return line;
  const before = known.get(line);
  if (
    before?.instrument === instrument &&
    before.moved.steps === moved.steps &&
    before.moved.halfSteps === moved.halfSteps
  )
    return before.line;
  const now = transposePiece(line, moved, instrumentOf(instrument));
  known.set(line, { moved, instrument, line: now });
  return now;
}

/** The root of the first chord that a chart names. */
function firstRoot(line: LinePiece) {
  for (const bar of readPiece(line).chart.bars) {
    for (const { harmony } of bar.spans) if (harmony.kind === 'chord') return harmony.chord.root;
  }
  return null;
}

/** The interval between the first notes of bars that both states of a line have; null where there is none. */
function betweenFirstNotes(before: LinePiece, after: LinePiece): Interval | null {
  const old = new Map(before.bars.map((bar) => [bar.id, bar.notes[0]]));
  for (const { id, notes } of after.bars) {
    const [was, is] = [old.get(id), notes[0]];
    if (was !== undefined && is !== undefined) return intervalBetweenPitches(was.pitch, is.pitch);
  }
  return null;
}

/**
 * By how much a line was transposed between two states of it; null where that is not what happened. Its chart tells,
 * and of the octaves its first note; without notes it is the nearer way.
 */
export function stepBetween(before: LinePiece, after: LinePiece): Interval | null {
  if (before.chartText === after.chartText) return null;
  const [from, to] = [firstRoot(before), firstRoot(after)];
  if (from === null || to === null) return null;
  const up = intervalBetween(from, to);
  if (isUnison(up) || transposeChartText(before.chartText, up) !== after.chartText) return null;
  const heard = betweenFirstNotes(before, after);
  const octaves =
    heard === null ? (up.halfSteps > 6 ? -1 : 0) : Math.round((heard.halfSteps - up.halfSteps) / 12);
  return { steps: up.steps + 7 * octaves, halfSteps: up.halfSteps + 12 * octaves };
}
