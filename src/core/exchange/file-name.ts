import type { LineSheet } from '../lesson';
import { describeKey } from '../theory';
import { keyAt } from './signature';

/**
 * What the name of an exported file says: lesson, piece, key and tempo, in words that are left when a file system
 * allows only plain letters (`B♭` would become `B`). The piece is left out where it is called like the lesson.
 */
export function exportName(sheet: LineSheet, lessonTitle: string): string {
  const key = describeKey(keyAt(sheet, 0)).replace(/♭/g, ' flat').replace(/♯/g, ' sharp');
  const piece = lessonTitle.includes(sheet.name) ? [] : [sheet.name];
  return [lessonTitle, ...piece, key, `${sheet.tempo} bpm`].join(', ');
}
