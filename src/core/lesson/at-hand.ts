import type { Lesson, LinePiece } from './types';

/** The piece at hand if it is a line, else the lesson's first line, else null. */
export function lineAtHand(lesson: Lesson, pieceId: string): LinePiece | null {
  const atHand = lesson.pieces.find((piece) => piece.id === pieceId);
  return atHand?.kind === 'line' ? atHand : (lesson.pieces.find((piece) => piece.kind === 'line') ?? null);
}
