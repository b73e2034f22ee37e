import { memo } from 'react';
import { type InstrumentSettings, type LinePiece, SHEET_STAGES, type SheetStage } from '../../../core/lesson';

interface SheetAheadProps {
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
}

/**
 * Works out the sheet of a line before what shows it, a stage in each child: between two of them the page may answer,
 * where in a long chart the whole sheet at once would keep it from a frame. It stands in front of whatever asks for the
 * sheet first.
 */
export const SheetAhead = memo(function SheetAhead(line: SheetAheadProps) {
  return SHEET_STAGES.map((stage) => <Stage key={stage.name} stage={stage} {...line} />);
});

const Stage = memo(function Stage({
  stage,
  piece,
  instrument,
}: SheetAheadProps & { readonly stage: SheetStage }) {
  stage.work(piece, instrument);
  return null;
});
