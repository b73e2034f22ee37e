import type { Lesson } from '../types';
import { changeLine } from './piece';

/** Takes that a piece keeps: enough to choose from, few enough to hear one after the other. */
export const MOST_TAKES = 8;

/** Takes a take off the list; the line stays as it is. */
export const forgetTake = (lesson: Lesson, pieceId: string, takeId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const takes = piece.takes.filter(({ id }) => id !== takeId);
    return takes.length === piece.takes.length ? piece : { ...piece, takes };
  });
