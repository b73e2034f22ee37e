import { askedOfBlank } from '../../core/asking';
import type { HandoutBlock, Lesson, Sheet } from '../../core/lesson';
import type { Engravable, ScoreLayout, ScoreOptions, Steps } from '../../score';
import { atFoot, cautionRows } from '../blocks/cautions';
import { codeRows } from '../blocks/code';
import type { BlockContext, EngravedScore } from '../blocks/context';
import { diaryRows, nameRows } from '../blocks/forms';
import { headRow, type Logo } from '../blocks/head';
import { noteRows } from '../blocks/notes';
import { pieceRows } from '../blocks/piece';
import { practiceRows } from '../blocks/practice';
import type { LessonCode } from '../code/lesson-code';
import { asksQuestions } from '../model/asked';
import { partBlocks } from '../model/blocks';
import type { FullSettings } from '../model/settings';
import type { TextMeasure } from './marks';
import type { Row } from './rows';
import { type Spacing, sizesFor } from './sizes';

/** What the layout asks of others: how wide a text is, and how a piece is engraved. */
export interface Tools {
  readonly measure: TextMeasure;
  readonly engrave: (sheet: Engravable, options: ScoreOptions) => Steps<ScoreLayout>;
}

/** What is to be set. */
export interface Copy {
  readonly lesson: Lesson;
  /** At the head of the first page. */
  readonly title: string;
  /** One a piece, in the lesson's order. */
  readonly sheets: readonly Sheet[];
  readonly settings: FullSettings;
  readonly logo: Logo | null;
  /** Of the lesson's link; null when it is not wanted or does not fit. */
  readonly code: LessonCode | null;
  /** Of the printed part of the page, in points. */
  readonly width: number;
}

export interface ComposedRows {
  readonly rows: readonly Row[];
  /** What the rows' system marks refer to. */
  readonly scores: readonly ScoreLayout[];
}

/** Sets everything that the teacher chose, from top to bottom, before it is parted into pages; in steps of a part. */
export function* composeRows(copy: Copy, spacing: Spacing, tools: Tools): Steps<ComposedRows> {
  const scores: ScoreLayout[] = [];
  const context = contextFor(copy, spacing, tools, scores);
  const { before, piece, after } = partBlocks(copy.settings.blocks);
  const ofSheet = (block: HandoutBlock) => sheetBlockRows(block, copy, context);
  const rows = [headRow(copy.title, copy.logo, context), ...before.flatMap(ofSheet)];
  for (const sheet of copy.sheets) {
    const own = copy.lesson.pieces.find(({ id }) => id === sheet.id);
    const set = {
      sheet,
      piece: own?.kind === 'line' ? own : undefined,
      prompt: own?.kind === 'blank' ? askedOfBlank(copy.lesson, own) : null,
      instrument: copy.lesson.instrument,
      named: isNamed(sheet, copy),
    };
    const parts = piece.filter((block) => !(own?.leftOut ?? []).includes(block));
    rows.push(...(yield* pieceRows(set, parts, context)));
  }
  yield;
  rows.push(...after.flatMap(ofSheet), ...codeRows(copy.code, context));
  return { rows, scores };
}

/** The name that a new piece begins with says nothing on paper. */
const NEW_NAME = 'Line';

/** A piece's name stands over it, unless it is the only one and the sheet's title says the name. */
const isNamed = ({ name }: Sheet, { lesson, sheets }: Copy): boolean =>
  sheets.length > 1 ||
  !(name.trim() === NEW_NAME || lesson.title.toLowerCase().includes(name.trim().toLowerCase()));

function sheetBlockRows(block: HandoutBlock, copy: Copy, context: BlockContext): readonly Row[] {
  switch (block) {
    case 'name':
      return nameRows(context);
    case 'diary':
      return diaryRows(context);
    case 'practice':
      return practiceRows(copy.lesson, copy.sheets, context);
    case 'notes':
      return noteRows(copy.lesson.notes, context);
    case 'cautions':
      return atFoot(copy.settings.blocks) ? [] : cautionRows(context);
    default:
      return [];
  }
}

function contextFor(copy: Copy, spacing: Spacing, tools: Tools, scores: ScoreLayout[]): BlockContext {
  const { settings, width } = copy;
  const sizes = sizesFor(settings.print);
  const asks = asksQuestions(settings);
  const usual: ScoreOptions = {
    width,
    staffSpace: spacing.staff / 4,
    degrees: settings.degrees,
    fingers: settings.fingers,
    // A tab alone does not say when its notes are played: the counting does.
    counting: settings.counting || (settings.parts === 'tab' && !asks),
    numerals: settings.numerals,
    positions: settings.positions,
    parts: settings.parts,
    barsPerSystem: sizes.barsPerSystem,
    joinsSections: true,
    givesWay: spacing.givesWay ?? false,
    measureNumbers: true,
    textSizes: sizes.score,
  };
  const engrave = function* (sheet: Engravable, options: Partial<ScoreOptions> = {}): Steps<EngravedScore> {
    const layout = yield* tools.engrave(sheet, { ...usual, ...options });
    return { layout, index: scores.push(layout) - 1 };
  };
  return { width, settings, sizes, spacing, measure: tools.measure, asks, engrave };
}
