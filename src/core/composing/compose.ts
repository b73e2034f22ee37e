import {
  changeLine,
  isHeld,
  type Lesson,
  type LineBar,
  type LinePiece,
  linePiece,
  lineRequest,
  readPiece,
} from '../lesson';
import { type ComposedLine, type ComposeRequest, composeLine } from '../line';

/** A lesson with a newly composed line, and what the composer has to say about it. */
export interface Composition {
  readonly lesson: Lesson;
  readonly remarks: readonly string[];
}

/** What the composer is asked for a piece: every bar that is not held is free. */
export function composeRequest(lesson: Lesson, piece: LinePiece): ComposeRequest {
  const { chart, key } = readPiece(piece);
  return {
    ...lineRequest(piece, chart, key, lesson.instrument),
    seed: piece.seed,
    kept: piece.bars.map((bar) => (isHeld(bar) ? bar.notes : null)),
  };
}

const sameNotes = (one: LineBar['notes'], other: LineBar['notes']): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** The piece with other notes in its free bars; a bar that stays the same is the very same. */
export function withLine(piece: LinePiece, line: Pick<ComposedLine, 'bars'>, seed: number): LinePiece {
  const bars = piece.bars.map((bar, index): LineBar => {
    const notes = line.bars[index] ?? [];
    return isHeld(bar) || sameNotes(bar.notes, notes) ? bar : { ...bar, notes, origin: 'composed' };
  });
  return { ...piece, seed, bars };
}

/** Composes every bar that is not kept. Same lesson, same line. */
export function composePiece(lesson: Lesson, pieceId: string): Composition {
  const piece = linePiece(lesson, pieceId);
  if (piece === null) {
    return { lesson, remarks: [] };
  }
  const line = composeLine(composeRequest(lesson, piece));
  return {
    lesson: changeLine(lesson, pieceId, (each) => withLine(each, line, each.seed)),
    remarks: line.remarks,
  };
}
