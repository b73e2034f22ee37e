import type { NoteReport, Pace } from './types';

/** Fewer notes than this say nothing of the pace; a drift below this many seconds in a round is none; ours. */
const LEAST = { notes: 6, drift: 0.045 } as const;

/** The middle one of some numbers; null of none. */
function median(values: readonly number[]): number | null {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = sorted.length >> 1;
  const [below, above] = [sorted[middle - 1], sorted[middle]];
  if (above === undefined) return null;
  return sorted.length % 2 === 1 || below === undefined ? above : (below + above) / 2;
}

/**
 * How late the notes of a round were, and whether they drifted: the line through their lateness that lies closest to all
 * of them (least squares) falls where someone rushes.
 */
export function paceOf(notes: readonly NoteReport[]): {
  readonly pace: Pace | null;
  readonly late: number | null;
} {
  const heard = notes.flatMap(({ note, late }) => (late === null ? [] : [{ at: note.start, late }]));
  const late = median(heard.map((each) => each.late));
  const [first, last] = [heard[0], heard.at(-1)];
  if (heard.length < LEAST.notes || !first || !last) return { pace: null, late };
  const mean = (of: (each: { at: number; late: number }) => number): number =>
    heard.reduce((sum, each) => sum + of(each), 0) / heard.length;
  const [at, lateness] = [mean((each) => each.at), mean((each) => each.late)];
  const spread = mean((each) => (each.at - at) ** 2);
  const slope = spread === 0 ? 0 : mean((each) => (each.at - at) * (each.late - lateness)) / spread;
  const drift = slope * (last.at - first.at);
  return { pace: Math.abs(drift) < LEAST.drift ? 'steady' : drift < 0 ? 'rushing' : 'dragging', late };
}
