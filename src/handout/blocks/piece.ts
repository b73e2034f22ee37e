import type { LinePiece, Sheet } from '../../core/lesson';
import type { ScoreLayout } from '../../score';
import { paragraphRows, type Row, textRow } from '../layout/rows';
import { BODY, PIECE_NAME } from '../layout/sizes';
import type { BlockContext } from './context';
import { pieceFacts } from './facts';

/** A piece as it comes onto the page. */
export interface PieceToSet {
  readonly sheet: Sheet;
  /** What the lesson says about it beyond the sheet; undefined for blank bars. */
  readonly piece: LinePiece | undefined;
  readonly score: ScoreLayout;
  /** Index of the score among all of the page's scores. */
  readonly scoreIndex: number;
  /** The name is left out where the page's title already says it. */
  readonly named: boolean;
}

/** A piece: its name, one line of facts, and its systems, each of which stays whole. */
export function pieceRows(set: PieceToSet, context: BlockContext): readonly Row[] {
  const { sheet } = set;
  const name = set.named ? [textRow(sheet.name, PIECE_NAME, { gap: context.spacing.blockGap })] : [];
  const facts =
    sheet.kind === 'line'
      ? paragraphRows(pieceFacts(sheet, set.piece), BODY, context.width, context.measure, {
          gap: set.named ? 0 : 2,
        })
      : [];
  const head = [...name, ...facts].map((row) => ({ ...row, keepWithNext: true }));
  const systems = set.score.systems.map(
    (system, index): Row => ({
      height: system.height,
      gap: index === 0 ? context.spacing.systemGap / 2 : context.spacing.systemGap,
      keepWithNext: false,
      marks: [{ kind: 'system', score: set.scoreIndex, system: system.index, x: 0, y: 0 }],
    }),
  );
  return systems.length === 0 ? [] : [...head, ...systems];
}
