import {
  EXPLAINED_HEADING,
  explainedToStudent,
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
} from '../../core/lesson';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/** What the line teaches, where to listen and why there is silence, for the student in one paragraph. */
export function explainedRows(
  sheet: LineSheet,
  piece: LinePiece | undefined,
  instrument: InstrumentSettings,
  context: BlockContext,
): readonly Row[] {
  const { sizes, spacing, width, measure } = context;
  const sentences = piece === undefined ? [] : explainedToStudent(piece, sheet, instrument, { brief: true });
  const rows = paragraphRows(sentences.join(' '), sizes.body, width, measure);
  return headedRows(EXPLAINED_HEADING, sizes.heading, spacing.blockGap, rows);
}
