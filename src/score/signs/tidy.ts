import { boxOf, lineMark, type Mark, moveMark } from '../ink';

/** Bravura's stem anchors lie this far from a head's middle line, and a stem begun at the middle would show. */
export const STEM_ANCHOR = 1.7;
/** An accidental keeps this much more distance from a head with ledger lines. */
const LEDGER_CLEARANCE = 4;

/**
 * A sharp keeps this distance from its head, and so do the brackets of a courtesy accidental: a quarter of a staff
 * space (E. Gould, "Behind Bars", 2011, accidentals, from memory).
 */
const HEAD_CLEARANCE = 2.5;

/** The marks of one sign, or of the stems and beams of several, with white where engravers leave it. */
export function tidy(marks: readonly Mark[]): readonly Mark[] {
  const ledgers = marks.some(({ role }) => role === 'ledger-line');
  const of = (role: Mark['role']): ReturnType<typeof boxOf> =>
    boxOf(marks.filter((mark) => mark.role === role));
  const [head, accidental] = [of('note'), of('accidental')];
  const near = head && accidental ? Math.min(0, head.left - HEAD_CLEARANCE - accidental.right) : 0;
  return marks.map((mark) => {
    if (mark.role === 'accidental') return moveMark(mark, Math.min(near, ledgers ? -LEDGER_CLEARANCE : 0), 0);
    const [start, tip] = mark.kind === 'path' && mark.role === 'stem' ? mark.segments : [];
    const [x = 0, y = 0] = start?.points ?? [];
    const [, tipY = 0] = tip?.points ?? [];
    return tip && mark.kind === 'path'
      ? lineMark('stem', x, y + (tipY < y ? -STEM_ANCHOR : STEM_ANCHOR), x, tipY, mark.stroke)
      : mark;
  });
}
