import { type ComposedLine, composeLine, type Idea } from '../../line';
import { isHeld } from '../held';
import { lineRequest, readPiece } from '../request';
import type { Lesson, LineBar, LinePiece } from '../types';
import { changeLine, linePiece } from './piece';

/** A lesson with a newly composed line, and what the composer has to say about it. */
export interface Composition {
  readonly lesson: Lesson;
  readonly remarks: readonly string[];
}

function compose(lesson: Lesson, piece: LinePiece, seed: number): ComposedLine {
  const { chart, key } = readPiece(piece);
  return composeLine({
    ...lineRequest(piece, chart, key, lesson.instrument),
    seed,
    kept: piece.bars.map((bar) => (isHeld(bar) ? bar.notes : null)),
  });
}

const sameNotes = (one: LineBar['notes'], other: LineBar['notes']): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

function withLine(piece: LinePiece, line: ComposedLine, seed: number): LinePiece {
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
  const line = compose(lesson, piece, piece.seed);
  return {
    lesson: changeLine(lesson, pieceId, (each) => withLine(each, line, each.seed)),
    remarks: line.remarks,
  };
}

/** Seeds tried before another take gives up; composing is fast, and a short chart may have few lines. */
const TRIES = 12;

/** Composes again with another seed, until the line differs from the one at hand. */
export function anotherTake(lesson: Lesson, pieceId: string): Composition {
  const piece = linePiece(lesson, pieceId);
  if (piece === null) {
    return { lesson, remarks: [] };
  }
  for (let step = 1; step <= TRIES; step += 1) {
    const seed = (piece.seed + step) >>> 0;
    const line = compose(lesson, piece, seed);
    const differs = piece.bars.some(
      (bar, index) => !isHeld(bar) && !sameNotes(bar.notes, line.bars[index] ?? []),
    );
    if (differs) {
      return {
        lesson: changeLine(lesson, pieceId, (each) => withLine(each, line, seed)),
        remarks: line.remarks,
      };
    }
  }
  return {
    lesson,
    remarks: [
      piece.bars.every(isHeld)
        ? 'Every bar is kept, so there is nothing to compose.'
        : 'There is no other line for these bars at this level; allow another technique or keep fewer bars.',
    ],
  };
}

function changeBar(
  lesson: Lesson,
  pieceId: string,
  barIndex: number,
  change: (bar: LineBar) => LineBar,
): Lesson {
  return changeLine(lesson, pieceId, (piece) => {
    const bar = piece.bars[barIndex];
    return bar === undefined
      ? piece
      : { ...piece, bars: piece.bars.map((each, index) => (index === barIndex ? change(each) : each)) };
  });
}

/** Puts an idea into a written bar (index from 0). */
export const takeIdea = (lesson: Lesson, pieceId: string, barIndex: number, idea: Idea): Lesson =>
  changeBar(lesson, pieceId, barIndex, (bar) => ({ ...bar, notes: idea.notes, origin: 'idea' }));

/** Protects a written bar (index from 0) from being composed again, or frees it. */
export const keepBar = (lesson: Lesson, pieceId: string, barIndex: number, kept: boolean): Lesson =>
  changeBar(lesson, pieceId, barIndex, (bar) => ({ ...bar, kept }));
