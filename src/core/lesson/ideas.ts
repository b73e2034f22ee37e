import { type Idea, ideasForBar } from '../line';
import { lineRequest } from './request';
import { deriveSheet } from './sheet';
import type { InstrumentSettings, LinePiece } from './types';

/** The ideas for one written bar (index from 0) in the line as it stands, the best first. */
export function ideasFor(piece: LinePiece, settings: InstrumentSettings, barIndex: number): readonly Idea[] {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line' || sheet.bars[barIndex] === undefined) {
    return [];
  }
  const notes = sheet.bars.map((bar) => bar.notes.map((each) => each.note));
  return ideasForBar(lineRequest(piece, sheet.chart, sheet.key, settings), notes, barIndex);
}
