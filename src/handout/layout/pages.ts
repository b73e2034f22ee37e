import { remembered } from '../../core/base';
import type { Lesson, Paper, Sheet } from '../../core/lesson';
import type { Engravable, ScoreLayout, ScoreOptions } from '../../score';
import type { Logo } from '../blocks/head';
import type { LessonCode } from '../code/lesson-code';
import { type FullSettings, fullSettings } from '../model/settings';
import { type Room, spreadOut } from './breaks';
import type { Tools } from './compose';
import { fitPages, footOf, roomOver } from './fit';
import { type Mark, moved, type PageLayout, type Tag, type TextMeasure, tagged } from './marks';
import { type Sheet as PaperSheet, sheetOf } from './paper';
import { type Row, shortened } from './rows';
import { sideBySide } from './side-by-side';
import { sizesFor } from './sizes';

export interface HandoutLayout {
  readonly paper: Paper;
  readonly title: string;
  readonly pages: readonly PageLayout[];
  /** What the system marks refer to. */
  readonly scores: readonly ScoreLayout[];
  readonly remarks: readonly string[];
}

/** Distance from the running header's rule to the rows, and from the rows to the page number. */
const FURNITURE_GAP = 9;
/** A running header and a page number as lines, as multiples of their font size. */
const LINE = 1.4;
/** What a reader who turns no pages does without. */
const FURNITURE: Tag = { role: 'Artifact' };

/**
 * Lays the handout out on paper. Pages break only between systems, lines of text and boxes, and no page is left
 * with a few lines as long as others can give it some of theirs.
 * @param sheets - one a piece of the lesson, in its order
 * @param logo - what the lesson's logo was read as
 * @param code - of the lesson's link, when it is wanted and fits
 */
export function handoutPages(
  lesson: Lesson,
  sheets: readonly Sheet[],
  logo: Logo | null,
  tools: Tools,
  code: LessonCode | null = null,
): HandoutLayout {
  const settings = fullSettings(lesson.handout);
  const paper = sheetOf(settings.paper, settings);
  const line = sizesFor(settings.print).small.size * LINE;
  const height = paper.bottom - paper.top - line - FURNITURE_GAP;
  const room: Room = { first: height, later: height - line - FURNITURE_GAP };
  const copy = { lesson, sheets, settings, logo, code, width: paper.right - paper.left };
  const { pages, scores, remarks } = fitPages(copy, room, { ...tools, engrave: engraveOnce(tools.engrave) });
  const foot = footOf(copy, tools);
  const free = roomOver(foot, room);
  return {
    paper: settings.paper,
    title: lesson.title,
    pages: sideBySide(
      settings.twoUp,
      pages.map((rows, index) => {
        const isLast = index === pages.length - 1;
        const spread = isLast ? rows : spreadOut(rows, index === 0 ? free.first : free.later);
        const folio = { index, count: pages.length, title: lesson.title, foot: index === 0 ? foot : null };
        return placePage(spread, folio, settings, paper, tools.measure);
      }),
    ),
    scores,
    remarks,
  };
}

/** The same text for the same staves of one handout. */
export function engravedAs(sheet: Engravable, options: ScoreOptions): string {
  if (sheet.kind === 'keyboard') return JSON.stringify([sheet.line.id, sheet.kind, options]);
  if (sheet.kind === 'part') return JSON.stringify([sheet.line.id, sheet.part, options]);
  const bars = sheet.kind === 'line' ? sheet.bars.map(({ written }) => written.number).join() : sheet.bars;
  const excerpt = sheet.kind === 'line' && sheet.excerpt === true;
  return JSON.stringify([sheet.id, bars, excerpt, options]);
}

/** Several spacings are tried, most of them with the same staves. */
function engraveOnce(engrave: Tools['engrave']): Tools['engrave'] {
  const done = new Map<string, ScoreLayout>();
  return (sheet, options) => remembered(done, engravedAs(sheet, options), () => engrave(sheet, options));
}

interface Folio {
  readonly index: number;
  readonly count: number;
  readonly title: string;
  /** What stands over the page's number. */
  readonly foot: Row | null;
}

function placePage(
  rows: readonly Row[],
  folio: Folio,
  settings: FullSettings,
  paper: PaperSheet,
  measure: TextMeasure,
): PageLayout {
  const { small } = sizesFor(settings.print);
  const isFirst = folio.index === 0;
  const marks: Mark[] = isFirst ? [] : [...runningHeader(folio.title, settings, paper, measure)];
  let y = paper.top + (isFirst ? 0 : small.size * LINE + FURNITURE_GAP);
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
  marks.push({
    kind: 'text',
    text: `Page ${folio.index + 1} of ${folio.count}`,
    ...small,
    x: paper.right,
    y: paper.bottom - small.size * 0.3,
    anchor: 'end',
    tag: FURNITURE,
  });
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
