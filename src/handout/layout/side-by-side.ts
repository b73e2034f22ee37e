import { type Mark, moved, type PageLayout } from './marks';
import { points } from './paper';

/** Marks at the edges of the sheet show where it is cut or folded. */
const CUT = { from: points(4), length: points(4) } as const;

/**
 * Pages two by two on sheets that lie on their sides, in their order; a page that is the only one stands there twice, for
 * two students.
 */
export function sideBySide(twoUp: boolean, pages: readonly PageLayout[]): readonly PageLayout[] {
  const [only, second] = pages;
  if (!twoUp || only === undefined) return pages;
  const halves = second === undefined ? [only, only] : pages;
  const sheets: PageLayout[] = [];
  for (let index = 0; index < halves.length; index += 2) {
    const [left = only, right] = [halves[index], halves[index + 1]];
    const { width, height } = left;
    sheets.push({
      width: 2 * width,
      height,
      marks: [
        ...left.marks,
        ...(right?.marks ?? []).map((mark) => moved(mark, width, 0)),
        ...cutMarks(width, height),
      ],
    });
  }
  return sheets;
}

const cutMarks = (x: number, height: number): readonly Mark[] =>
  [CUT.from, height - CUT.from - CUT.length].map((y) => ({
    kind: 'rule',
    x,
    y,
    width: 0,
    height: CUT.length,
    tag: { role: 'Artifact' },
  }));
