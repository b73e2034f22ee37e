import { type InstrumentSettings, type LinePiece, type LineSheet, studyFacts } from '../../core/lesson';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/** The key facts of a line, a line of text each. */
export function studyRows(
  sheet: LineSheet,
  piece: LinePiece | undefined,
  instrument: InstrumentSettings,
  context: BlockContext,
): readonly Row[] {
  const { sizes, spacing, width, measure } = context;
  const facts = piece === undefined ? [] : studyFacts(piece, sheet, instrument).filter(({ key }) => key);
  const rows = facts.flatMap(({ name, sentence }) =>
    paragraphRows(`${name}: ${sentence}`, sizes.body, width, measure, { gap: 2 }),
  );
  return headedRows('Key facts', sizes.heading, spacing.blockGap, rows);
}
