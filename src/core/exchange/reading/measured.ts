import type { Chart } from '../../chart';
import type { Instrument } from '../../fretboard';
import { type LinePiece, lineRequest, readPiece } from '../../lesson';
import { levelLimits, measuredLevel } from '../../line';

/** A piece at the level that its line was measured to have, with the sentence that says so; a silent line as it is. */
export function atItsLevel(
  piece: LinePiece,
  chart: Chart,
  instrument: Instrument,
): { readonly piece: LinePiece; readonly sentences: readonly string[] } {
  if (piece.bars.every(({ notes }) => notes.length === 0)) return { piece, sentences: [] };
  const request = lineRequest(piece, chart, readPiece(piece).key, instrument);
  const { level, notesPerSecond } = measuredLevel(
    request,
    piece.bars.map(({ notes }) => notes),
  );
  const busiest = Math.round(notesPerSecond * 10) / 10;
  return {
    piece: { ...piece, level },
    sentences: [
      `By its notes the line is of level ${level} (${levelLimits(level).words}); its busiest bar has ${busiest} notes a second.`,
    ],
  };
}
