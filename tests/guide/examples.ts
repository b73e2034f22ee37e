/**
 * The examples of the contributor's guide, as they stand there: `guide.test.ts` holds each against the block in
 * `DEVELOPERS.md` that begins with its name, and runs it.
 */
import { composePiece } from '../../src/core/composing';
import { writeMusicXml, writeTextTab } from '../../src/core/exchange';
import {
  deriveSheets,
  type Lesson,
  type LinePiece,
  newLesson,
  parseLesson,
  printLesson,
  renamePiece,
  setChartText,
  setLevel,
} from '../../src/core/lesson';
import { buildPerformance } from '../../src/core/performance';

// example: from a chart to a line and its files
export function fromChartToFiles(chartText: string) {
  const typed = newLesson('lesson-1', 'Harbour steps');
  const [piece] = typed.pieces.filter((each): each is LinePiece => each.kind === 'line');
  if (!piece) throw new Error('A new lesson has a line.');
  const asked = setLevel(setChartText(typed, piece.id, chartText), piece.id, 3);
  const { lesson } = composePiece(asked, piece.id);
  const [sheet] = deriveSheets(lesson);
  if (sheet?.kind !== 'line') throw new Error('The sheet of a line is a line.');
  return {
    lesson,
    sheet,
    performance: buildPerformance(sheet, { tempo: sheet.tempo, countIn: 1, passage: null }),
    musicXml: writeMusicXml(sheet, lesson.title),
    tab: writeTextTab(sheet, lesson.title),
  };
}
// end

// example: an edit command
export const numberPieces = (lesson: Lesson): Lesson =>
  lesson.pieces.reduce((edited, { id }, index) => renamePiece(edited, id, `Exercise ${index + 1}`), lesson);
// end

// example: what is saved can be read
export const savedAndRead = (lesson: Lesson) => parseLesson(printLesson(lesson));
// end
