import { type Mark, pathMark } from '../ink';
import type { InkRole } from '../types';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How thick a tie or slur is at its ends and in its middle (Bravura's engraving defaults). */
const END = 1;
const MIDDLE = 2.2;

/**
 * A tie or slur: two curves, one over the other.
 * @param away 1 bows down, −1 up
 * @param bow how far its middle lies from the line between its ends
 */
export function curveMark(role: InkRole, from: Point, to: Point, away: 1 | -1, bow: number): Mark {
  // A cubic reaches three quarters of the way to its handles.
  const inner = (bow * away * 4) / 3;
  const outer = ((bow * away + away * (MIDDLE - END)) * 4) / 3;
  const along = (share: number): Point => ({
    x: from.x + (to.x - from.x) * share,
    y: from.y + (to.y - from.y) * share,
  });
  const [first, second] = [along(0.25), along(0.75)];
  const far = away * END;
  return pathMark(
    role,
    [
      { command: 'M', points: [from.x, from.y] },
      { command: 'C', points: [first.x, first.y + inner, second.x, second.y + inner, to.x, to.y] },
      { command: 'L', points: [to.x, to.y + far] },
      {
        command: 'C',
        points: [second.x, second.y + far + outer, first.x, first.y + far + outer, from.x, from.y + far],
      },
      { command: 'Z', points: [] },
    ],
    0,
  );
}
