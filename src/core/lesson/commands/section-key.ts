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
