import type { AskedOfBlank } from '../../core/asking';
import { barRange, capitalised } from '../../core/base';
import type { HandoutBlock, InstrumentSettings, LinePiece, LineSheet, Sheet } from '../../core/lesson';
import type { Steps, SystemLayout } from '../../score';
import type { Tag } from '../layout/marks';
import { headedRows, paragraphRows, type Row, underHeading } from '../layout/rows';
import { isRhythmAlone } from '../model/blocks';
import { systemWords } from './alternatives';
import { bandRows } from './band';
import { chartRows } from './chart';
import { clappingRows } from './clapping';
import type { BlockContext } from './context';
import { explainedRows } from './explained';
import { pieceFacts } from './facts';
import { neckRows } from './neck';
import { answerRows, questionRows, withBarsToWrite } from './questions';
import { rhythmRows } from './rhythm';
import { shapeRows } from './shapes';
import { stageRows } from './stages';
import { studyRows } from './study';
import { systemRows } from './systems';

/** A piece as it comes onto the page. */
export interface PieceToSet {
  readonly sheet: Sheet;
  /** What the lesson says about it beyond the sheet; undefined for blank bars. */
  readonly piece: LinePiece | undefined;
  /** What blank bars ask for, and the chords they are written over; null for a line, and where nothing is asked. */
  readonly prompt: AskedOfBlank | null;
  /** The lesson's own. */
  readonly instrument: InstrumentSettings;
  /** The name is left out where the page's title already says it. */
  readonly named: boolean;
}

/** A piece: its name, and the parts that the teacher chose, in their order. */
export function* pieceRows(
  set: PieceToSet,
  blocks: readonly HandoutBlock[],
  context: BlockContext,
): Steps<readonly Row[]> {
  const { sheet } = set;
  const parts: Row[] = [];
  for (const [index, block] of blocks.entries()) {
    yield;
    const rows = yield* blockRows(block, set, context);
    const apart = block === 'music' && index > 0 && blocks[index - 1] !== 'facts';
    parts.push(...(apart ? setApart(rows, context) : rows));
  }
  if (parts.length === 0) return [];
  return set.named
    ? headedRows(sheet.name, context.sizes.pieceName, context.spacing.blockGap, underHeading(parts))
    : parts;
}

/** The music has no heading that would set it apart from a chart, shapes or words over it. */
const setApart = (rows: readonly Row[], { spacing }: BlockContext): readonly Row[] =>
  rows.map((row, index) => (index === 0 ? { ...row, gap: spacing.blockGap } : row));

function* blockRows(block: HandoutBlock, set: PieceToSet, context: BlockContext): Steps<readonly Row[]> {
  if (block === 'music')
    return yield* set.prompt === null
      ? musicRows(withBarsToWrite(set.sheet, context), context)
      : promptRows(set.prompt, context);
  if (block === 'stages') return yield* stageRows(set, context, (sheet) => musicRows(sheet, context));
  return set.sheet.kind === 'line' ? yield* lineBlockRows(block, set.sheet, set, context) : [];
}

function* lineBlockRows(
  block: HandoutBlock,
  sheet: LineSheet,
  set: PieceToSet,
  context: BlockContext,
): Steps<readonly Row[]> {
  switch (block) {
    case 'facts':
      return factRows(sheet, set, context);
    case 'chart':
      return chartRows(sheet, context);
    case 'shapes':
      return shapeRows(sheet, set.piece?.hand, context);
    case 'explained':
      return explainedRows(sheet, set.piece, set.instrument, context);
    case 'study':
      return studyRows(sheet, set.piece, set.instrument, context);
    case 'questions':
      return questionRows(sheet, context);
    case 'answers':
      return answerRows(sheet, context);
    case 'neck':
      return neckRows(sheet, context);
    case 'rhythm':
      return yield* rhythmRows(sheet, context);
    case 'clapping':
      return yield* clappingRows(sheet, context);
    case 'chops':
    case 'organ':
    case 'drums':
      return yield* bandRows(sheet, block, set.piece?.playing.drumWay ?? null, context);
    default:
      return [];
  }
}

/** What blank bars ask for, and the bars with their chords. */
function* promptRows({ words, sheet }: AskedOfBlank, context: BlockContext): Steps<readonly Row[]> {
  const { sizes, width, measure } = context;
  const said = paragraphRows(words, sizes.body, width, measure, { gap: 2 });
  return [
    ...said.map((row) => ({ ...row, keepWithNext: true })),
    // Nothing in them is asked about.
    ...(yield* musicRows(sheet, { ...context, asks: false })),
  ];
}

/** Where questions are asked, the words do not say what the notes are: whoever has them read aloud listens to the line. */
const figureOf = (sheet: Sheet, system: SystemLayout, { settings, asks }: BlockContext): Tag => ({
  role: 'Figure',
  alternative:
    asks && sheet.kind === 'line'
      ? `${capitalised(barRange(...endsOf(sheet, system)))} of ${sheet.name}, which the questions are about.`
      : systemWords(sheet, system, { places: settings.parts !== 'staff', rests: true }),
});

function endsOf({ bars }: LineSheet, system: SystemLayout): readonly [number, number] {
  const numbers = system.bars.map(({ bar }) => bars[bar]?.written.number ?? bar + 1);
  return [numbers[0] ?? 1, numbers.at(-1) ?? 1];
}

/**
 * On the staff alone nothing tells where the hand stands, so that it can be a test; on a sheet of rhythms alone nothing
 * has a pitch, so that neither key nor hand is told.
 */
function factRows(sheet: LineSheet, { piece, named }: PieceToSet, context: BlockContext): readonly Row[] {
  const { sizes, width, measure, settings } = context;
  const pitched = !isRhythmAlone(settings.blocks);
  const told = { key: pitched, hand: pitched && settings.parts !== 'staff' };
  const facts = pieceFacts(sheet, piece, told);
  const rows = paragraphRows(facts, sizes.body, width, measure, { gap: named ? 0 : 2 });
  return rows.map((row) => ({ ...row, keepWithNext: true }));
}

/** The systems of a piece, each of which stays whole. */
function* musicRows(sheet: Sheet, context: BlockContext): Steps<readonly Row[]> {
  const { layout, index: score } = yield* context.engrave(sheet);
  yield;
  return systemRows(layout, score, context, (system) => figureOf(sheet, system, context));
}
