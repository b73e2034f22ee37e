import { type LineSheet, toldTempo } from '../lesson';
import { describeKeyIn } from '../theory';
import { keyAt } from './signature';

/** Characters of a lesson's and a piece's name, so that key and tempo are still there when a long name is cut. */
const MOST_OF_LESSON = 34;
const MOST_OF_PIECE = 18;

/**
 * What the name of an exported file says: lesson, piece, key and tempo, in words that are left when a file system
 * allows only plain letters (`B♭` would become `B`). The piece is left out where it is called like the lesson.
 */
export function exportName(sheet: LineSheet, lessonTitle: string): string {
  const key = describeKeyIn(sheet.noteNames ?? 'letters', keyAt(sheet, 0))
    .replace(/♭/g, ' flat')
    .replace(/♯/g, ' sharp');
  const piece = lessonTitle.includes(sheet.name) ? [] : [cut(sheet.name, MOST_OF_PIECE)];
  return [cut(lessonTitle, MOST_OF_LESSON), ...piece, key, `${toldTempo(sheet, sheet.tempo)} bpm`].join(', ');
}

const cut = (name: string, most: number): string => [...name].slice(0, most).join('').trimEnd();
