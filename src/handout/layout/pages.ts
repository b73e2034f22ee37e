import type { Lesson, Paper, Sheet } from '../../core/lesson';
import type { ScoreLayout, ScoreOptions } from '../../score';
import { cautionRows } from '../blocks/cautions';
import type { BlockContext } from '../blocks/context';
import { noteRows } from '../blocks/notes';
import { type PieceToSet, pieceRows } from '../blocks/piece';
import { breakPages, isStranded, type Room } from './breaks';
import { type Mark, moved, type TextMeasure } from './marks';
import { type Sheet as PaperSheet, sheetOf } from './paper';
import { paragraphRows, type Row } from './rows';
import { SCORE_TEXT, SMALL, SMALL_BOLD, SPACINGS, type Spacing, TITLE } from './sizes';

/** A page as data: what stands where, in points from its top left corner. */
export interface PageLayout {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export interface HandoutLayout {
  readonly paper: Paper;
  readonly title: string;
  readonly pages: readonly PageLayout[];
  /** What the system marks refer to. */
  readonly scores: readonly ScoreLayout[];
  readonly remarks: readonly string[];
}

/** What the layout asks of others: how wide a text is, and how a piece is engraved. */
export interface Instruments {
  readonly measure: TextMeasure;
  readonly engrave: (sheet: Sheet, options: ScoreOptions) => ScoreLayout;
}

/** A running header of one line with a rule under it, and its distance to what follows. */
const HEADER = 24;
/** The page number's line and its distance to what stands above. */
const FOOTER = 20;
/** Four bars a system (elasticdog.com notation style guide). */
const BARS_A_SYSTEM = 4;

/**
 * Lays the handout out on paper. Pages break only between systems, lines of text and boxes. When a last page
 * would hold next to nothing, everything moves closer together, within the limits of print; when that does not
 * save the page, earlier pages give it some of their rows.
 */
export function handoutPages(lesson: Lesson, sheets: readonly Sheet[], tools: Instruments): HandoutLayout {
  const { paper } = lesson.handout;
  const sheet = sheetOf(paper);
  const height = sheet.bottom - sheet.top - FOOTER;
  const room: Room = { first: height, later: height - HEADER };
  const set = (spacing: Spacing) => setPages(lesson, sheets, tools, sheet.right - sheet.left, room, spacing);
  const comfortable = set(SPACINGS[0]);
  const chosen = isStranded(comfortable.pages, room)
    ? (firstWithin(comfortable.pages.length - 1, SPACINGS.slice(1), set) ?? comfortable)
    : comfortable;
  return {
    paper,
    title: lesson.title,
    pages: chosen.pages.map((rows, index) =>
      placePage(rows, index, chosen.pages.length, lesson.title, sheet),
    ),
    scores: chosen.scores,
    remarks: [],
  };
}

interface SetPages {
  readonly pages: readonly (readonly Row[])[];
  readonly scores: readonly ScoreLayout[];
}

/** The pages in the first spacing that does with so many; undefined when none does. */
function firstWithin(
  pages: number,
  spacings: readonly Spacing[],
  set: (spacing: Spacing) => SetPages,
): SetPages | undefined {
  for (const spacing of spacings) {
    const tried = set(spacing);
    if (tried.pages.length <= pages) return tried;
  }
  return undefined;
}

function setPages(
  lesson: Lesson,
  sheets: readonly Sheet[],
  tools: Instruments,
  width: number,
  room: Room,
  spacing: Spacing,
): SetPages {
  const context: BlockContext = { width, spacing, measure: tools.measure };
  const scores = sheets.map((piece) => tools.engrave(piece, scoreOptions(lesson, context)));
  const rows = [
    ...paragraphRows(lesson.title, TITLE, width, tools.measure).map(keepWithNext),
    ...sheets.flatMap((piece, index) => pieceRows(pieceToSet(lesson, sheets, piece, index, scores), context)),
    ...noteRows(lesson.notes, context),
    ...cautionRows(context),
  ];
  return { pages: breakPages(rows, room), scores };
}

const keepWithNext = (row: Row): Row => ({ ...row, keepWithNext: true });

const scoreOptions = (lesson: Lesson, context: BlockContext): ScoreOptions => ({
  width: context.width,
  staffSpace: context.spacing.staff / 4,
  degrees: lesson.handout.degrees,
  fingers: lesson.handout.fingers,
  counting: false,
  barsPerSystem: BARS_A_SYSTEM,
  measureNumbers: true,
  textSizes: SCORE_TEXT,
});

function pieceToSet(
  lesson: Lesson,
  sheets: readonly Sheet[],
  sheet: Sheet,
  index: number,
  scores: readonly ScoreLayout[],
): PieceToSet {
  const piece = lesson.pieces.find(({ id }) => id === sheet.id);
  return {
    sheet,
    piece: piece?.kind === 'line' ? piece : undefined,
    score: scores[index] ?? { width: 0, height: 0, systems: [] },
    scoreIndex: index,
    named: sheets.length > 1,
  };
}

function placePage(
  rows: readonly Row[],
  index: number,
  count: number,
  title: string,
  sheet: PaperSheet,
): PageLayout {
  const marks: Mark[] = index === 0 ? [] : runningHeader(title, sheet);
  let y = sheet.top + (index === 0 ? 0 : HEADER);
  rows.forEach((row, place) => {
    if (place > 0) y += row.gap;
    const top = y;
    marks.push(...row.marks.map((mark) => moved(mark, sheet.left, top)));
    y += row.height;
  });
  marks.push({
    kind: 'text',
    text: `Page ${index + 1} of ${count}`,
    ...SMALL,
    x: sheet.right,
    y: sheet.bottom - SMALL.size * 0.3,
    anchor: 'end',
  });
  return { width: sheet.width, height: sheet.height, marks };
}

function runningHeader(title: string, sheet: PaperSheet): Mark[] {
  return [
    {
      kind: 'text',
      text: title,
      ...SMALL_BOLD,
      x: sheet.left,
      y: sheet.top + SMALL_BOLD.size * 0.95,
      anchor: 'start',
    },
    { kind: 'rule', x: sheet.left, y: sheet.top + 15, width: sheet.right - sheet.left, height: 0 },
  ];
}
