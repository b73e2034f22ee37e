import { writeKey } from '../../chart';
import type { Key } from '../../theory';
import { readPiece } from '../request';
import type { Lesson } from '../types';
import { withChart } from './chart';
import { changeLine } from './piece';

/**
 * Writes the key of a section (by index) into the chart before its first bar, and the key in force before the bars
 * that follow it, so that nothing else is read in another key. The line stays.
 */
export const writeSectionKey = (lesson: Lesson, pieceId: string, section: number, key: Key): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { key: home } = readPiece(piece);
    const chartText = writeKey(piece.chartText, piece, section, key, home);
    return chartText === null ? piece : withChart(lesson, piece, { chartText });
  });

/** Throws the parked bars and sections of a piece away, with the aims for them. */
export const discardParked = (lesson: Lesson, pieceId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const gone = new Set([...piece.parked, ...piece.parkedSections].map(({ id }) => id));
    return gone.size === 0
      ? piece
      : {
          ...piece,
          parked: [],
          parkedSections: [],
          aims: piece.aims.filter(({ where }) => where.kind === 'line' || !gone.has(where.id)),
        };
  });
