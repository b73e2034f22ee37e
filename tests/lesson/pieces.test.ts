import { describe, expect, it } from 'vitest';
import { addPiece, copyPiece, type Lesson, movePiece, newLesson, removePiece } from '../../src/core/lesson';

const lesson = newLesson('test', 'Test');
const names = (each: Lesson) => each.pieces.map((piece) => piece.name);
const first = lesson.pieces[0]?.id ?? '';
const allIds = (each: Lesson) =>
  each.pieces.flatMap((piece) => [
    piece.id,
    ...(piece.kind === 'line' ? piece.bars.map((bar) => bar.id) : []),
  ]);

describe('the pieces of a lesson', () => {
  it('are added after the piece at hand, with a name of their own', () => {
    const more = addPiece(addPiece(lesson, 'blank', first), 'line', first);
    expect(names(more)).toEqual(['Line', 'Line 2', 'Your own line']);
  });

  it('are copied with new ids throughout', () => {
    const copied = copyPiece(lesson, first);
    expect(names(copied)).toEqual(['Line', 'Line 2']);
    const ids = allIds(copied);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('are put in order, and stay within the sheet', () => {
    const two = addPiece(lesson, 'blank', first);
    expect(names(movePiece(two, first, 1))).toEqual(['Your own line', 'Line']);
    expect(movePiece(two, first, -1)).toBe(two);
  });

  it('are removed, but never the last one', () => {
    const two = addPiece(lesson, 'blank', first);
    expect(names(removePiece(two, first))).toEqual(['Your own line']);
    expect(removePiece(lesson, first)).toBe(lesson);
  });
});
