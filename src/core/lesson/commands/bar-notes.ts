import type { Idea } from '../../line';
import type { Lesson, LineBar } from '../types';
import { changeLine } from './piece';

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

/** Puts an idea into a written bar (index from 0), in the place of all that is written there. */
export const takeIdea = (lesson: Lesson, pieceId: string, barIndex: number, idea: Idea): Lesson =>
  changeBar(lesson, pieceId, barIndex, ({ over: _, ...bar }) => ({
    ...bar,
    notes: idea.notes,
    origin: 'idea',
  }));

/** Protects a written bar (index from 0) from being composed again, or frees it. */
export const keepBar = (lesson: Lesson, pieceId: string, barIndex: number, kept: boolean): Lesson =>
  changeBar(lesson, pieceId, barIndex, (bar) => ({ ...bar, kept }));
