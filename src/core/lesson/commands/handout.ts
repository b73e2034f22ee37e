import type { HandoutBlock, Lesson, Piece } from '../types';

/** A part of the handout left out for one piece, or printed for it again. */
export function leaveOut(lesson: Lesson, pieceId: string, block: HandoutBlock, out: boolean): Lesson {
  const change = (piece: Piece): Piece => {
    const others = (piece.leftOut ?? []).filter((other) => other !== block);
    return { ...piece, leftOut: out ? [...others, block] : others };
  };
  return {
    ...lesson,
    pieces: lesson.pieces.map((piece) => (piece.id === pieceId ? change(piece) : piece)),
  };
}
