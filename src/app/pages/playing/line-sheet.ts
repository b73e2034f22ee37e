import { deriveSheet, type Lesson, type LinePiece, type LineSheet } from '../../../core/lesson';

/** The sheet of a line that has bars; null where there is nothing to play. */
export function lineSheet(lesson: Lesson, piece: LinePiece): LineSheet | null {
  const sheet = deriveSheet(piece, lesson.instrument, lesson.noteNames);
  return sheet.kind === 'line' && sheet.bars.length > 0 ? sheet : null;
}
