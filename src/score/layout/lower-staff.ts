import { type Mark, moveMark } from '../ink';
import { clefsEnd, headingOf, staffLines, warningOf } from './frame';
import type { MeasuredBar } from './measure-bar';
import type { PlacedBar } from './placed';
import { skylineOf } from './skyline';
import { changesInside, staffMarks } from './staff';
import { STAFF_HEIGHT, type Style } from './style';
import { tieMarks } from './ties';

/**
 * Least distance between the two staves of one player, and between their ink: with six spaces the notes round the
 * middle C, on their ledger lines, are seen to belong to the one or the other (common practice, no source).
 */
const LEAST_APART = 60;
const INK_APART = 8;

interface LowerRequest {
  readonly after: MeasuredBar | undefined;
  readonly style: Style;
  /** Where the last bar line stands, and where the staff lines end. */
  readonly x: number;
  readonly right: number;
}

export interface LowerStaff {
  readonly marks: readonly Mark[];
  /** Its top line, from the upper staff's. */
  readonly top: number;
}

/**
 * The second staff of a system whose bars have one, as near under the first as the ink of both allows; null otherwise.
 * @param upper everything on the first staff
 */
export function lowerStaff(
  bars: readonly PlacedBar[],
  upper: readonly Mark[],
  { after, style, x, right }: LowerRequest,
): LowerStaff | null {
  const under = bars.flatMap((placed) => (placed.bar.lower ? [{ ...placed, bar: placed.bar.lower }] : []));
  const [first] = under;
  if (first === undefined) return null;
  const heading = headingOf(first.bar.content, 0, style, clefsEnd(bars[0]?.bar.content));
  const marks = [
    ...staffLines(right, first.bar.content.staff),
    ...heading.marks,
    ...changesInside(under, 'staff'),
    ...warningOf(after?.lower?.content, x, 'staff').marks,
    ...under.flatMap(staffMarks),
    ...tieMarks(under, after?.lower),
  ];
  const ink = skylineOf(upper);
  const top = Math.max(
    STAFF_HEIGHT + LEAST_APART,
    ...marks.map(({ box }) => ink.bottom(box.left - 2, box.right + 2, STAFF_HEIGHT) + INK_APART - box.top),
  );
  return { marks: marks.map((mark) => moveMark(mark, 0, top)), top };
}
