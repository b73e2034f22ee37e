import type { FullSettings } from '../model/settings';
import type { Room } from './breaks';
import { type Mark, moved, type PageLayout, type Tag, type TextMeasure, tagged } from './marks';
import type { Sheet as PaperSheet } from './paper';
import { type Row, shortened } from './rows';
import { sizesFor } from './sizes';

/** Distance from the running header's rule to the rows, and from the rows to the page number. */
const FURNITURE_GAP = 9;
/** A running header and a page number as lines, as multiples of their font size. */
const LINE = 1.4;
/** What a reader who turns no pages does without. */
const FURNITURE: Tag = { role: 'Artifact' };

/** The room for rows on paper: over the page's number, and on later pages under the running header. */
export function roomOn(paper: PaperSheet, { print }: Pick<FullSettings, 'print'>): Room {
  const line = sizesFor(print).small.size * LINE;
  const height = paper.bottom - paper.top - line - FURNITURE_GAP;
  return { first: height, later: height - line - FURNITURE_GAP };
}

/** What a page has besides its rows. */
interface Folio {
  readonly isFirst: boolean;
  /** What stands over every page but the first. */
  readonly title: string;
  /** What stands over the page's number. */
  readonly foot: Row | null;
}

/** Puts rows on a page from its top, under the running header where it is not the first. */
export function placePage(
  rows: readonly Row[],
  folio: Folio,
  settings: FullSettings,
  paper: PaperSheet,
  measure: TextMeasure,
): PageLayout {
  const { small } = sizesFor(settings.print);
  const marks: Mark[] = folio.isFirst ? [] : [...runningHeader(folio.title, settings, paper, measure)];
  let y = paper.top + (folio.isFirst ? 0 : small.size * LINE + FURNITURE_GAP);
  rows.forEach((row, place) => {
    if (place > 0) y += row.gap;
    const top = y;
    marks.push(...row.marks.map((mark) => moved(mark, paper.left, top)));
    y += row.height;
  });
  if (folio.foot !== null) {
    const top = paper.bottom - small.size * LINE - folio.foot.height;
    marks.push(...folio.foot.marks.map((mark) => moved(mark, paper.left, top)));
  }
  return { width: paper.width, height: paper.height, marks };
}

/** Title at the left, class or student at the right, each in its share of the width, and a rule below. */
function runningHeader(
  title: string,
  settings: FullSettings,
  paper: PaperSheet,
  measure: TextMeasure,
): readonly Mark[] {
  const { small, smallBold } = sizesFor(settings.print);
  const width = paper.right - paper.left;
  const y = paper.top + small.size * 0.95;
  const share = settings.student === '' ? 1 : 0.6;
  const short = shortened(title, width * share, (text) => measure(text, smallBold));
  const student = shortened(settings.student, width * 0.36, (text) => measure(text, small));
  const right: Mark[] =
    student === '' ? [] : [{ kind: 'text', text: student, ...small, x: paper.right, y, anchor: 'end' }];
  const marks: readonly Mark[] = [
    { kind: 'text', text: short, ...smallBold, x: paper.left, y, anchor: 'start' },
    ...right,
    { kind: 'rule', x: paper.left, y: paper.top + small.size * LINE, width, height: 0 },
  ];
  return tagged(marks, FURNITURE);
}

/** The page with its number at the right of its foot. */
export function numberedPage(
  page: PageLayout,
  number: number,
  count: number,
  { print }: Pick<FullSettings, 'print'>,
  paper: PaperSheet,
): PageLayout {
  const { small } = sizesFor(print);
  const mark: Mark = {
    kind: 'text',
    text: `Page ${number} of ${count}`,
    ...small,
    x: paper.right,
    y: paper.bottom - small.size * 0.3,
    anchor: 'end',
    tag: FURNITURE,
  };
  return { ...page, marks: [...page.marks, mark] };
}
