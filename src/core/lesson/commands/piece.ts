import type { Lesson, LinePiece, Piece } from '../types';

/** The piece with this id, if it is a line; every command about a line starts here. */
export function linePiece(lesson: Lesson, pieceId: string): LinePiece | null {
  const piece = lesson.pieces.find((candidate) => candidate.id === pieceId);
  return piece?.kind === 'line' ? piece : null;
}

/** The lesson with one piece replaced; the very same lesson when the piece is missing or unchanged. */
export function changePiece(lesson: Lesson, pieceId: string, change: (piece: Piece) => Piece): Lesson {
  let changed = false;
  const pieces = lesson.pieces.map((piece) => {
    if (piece.id !== pieceId) {
      return piece;
    }
    const next = change(piece);
    changed ||= next !== piece;
    return next;
  });
  return changed ? { ...lesson, pieces } : lesson;
}

/** As {@link changePiece}, for line pieces only; a blank piece stays as it is. */
export function changeLine(lesson: Lesson, pieceId: string, change: (piece: LinePiece) => LinePiece): Lesson {
  return changePiece(lesson, pieceId, (piece) => (piece.kind === 'line' ? change(piece) : piece));
}
