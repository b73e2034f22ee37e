import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLesson, composePiece, ideaOfferFor } from '../../src/core/composing';
import {
  changeLine,
  deriveSheets,
  type Lesson,
  linePiece,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
  setLevel,
  setNoteNames,
} from '../../src/core/lesson';
import { NAMINGS } from '../../src/core/theory';

const PIECE = 'piece-1';

const chords = fc.constantFrom('B', 'Bb', 'Bm7', 'Bb7', 'F#m', 'Eb', 'A/C#', 'E7', 'Abmaj7', 'G');
const charts = fc.array(chords, { minLength: 2, maxLength: 6 }).map((bars) => `| ${bars.join(' | ')} |`);

/** The music of a lesson, and what stands behind all that is said of it. */
function musicOf(lesson: Lesson) {
  const piece = linePiece(lesson, PIECE);
  const [sheet] = deriveSheets(lesson);
  if (piece === null || sheet?.kind !== 'line') throw new Error('The line is gone.');
  return {
    bars: piece.bars,
    chart: piece.chartText,
    key: sheet.key,
    guesses: sheet.keyGuesses.map(({ key, score }) => ({ key, score })),
    notes: sheet.bars.map(({ notes }) => notes),
    fingering: sheet.fingering,
    techniques: sheet.bars.map(({ analysis }) => [analysis.techniques, analysis.notes]),
    ideas: ideaOfferFor(piece, lesson.instrument, 0, lesson.noteNames).ideas.map(({ id, notes }) => [
      id,
      notes,
    ]),
    found: checkLesson(lesson).map(({ about, bar }) => [about, bar]),
  };
}

describe('the names of notes', () => {
  it('do not change the music', () => {
    fc.assert(
      fc.property(charts, fc.constantFrom(1, 3, 5), fc.nat({ max: 999 }), (chart, level, seed) => {
        const blank = setLevel(setChartText(newLesson('lesson', 'Lesson'), PIECE, chart), PIECE, level);
        const lesson = changeLine(blank, PIECE, (piece) => ({ ...piece, seed }));
        const [letters, ...others] = NAMINGS.map((naming) =>
          musicOf(composePiece(setNoteNames(lesson, naming), PIECE).lesson),
        );
        for (const other of others) expect(other).toEqual(letters);
      }),
      { seed: 20, numRuns: 15 },
    );
  });

  it('leave the stored chart what it is: B in letters, whatever the sheet calls it', () => {
    const german = setNoteNames(setChartText(newLesson('lesson', 'Lesson'), PIECE, '| B | Bb |'), 'german');
    const opened = parseLesson(printLesson(german));
    if (!opened.ok) throw new Error('The file is not read.');
    for (const naming of NAMINGS) {
      const [sheet] = deriveSheets(setNoteNames(opened.value, naming));
      const symbols = sheet?.kind === 'line' && sheet.chart.bars.map(({ spans: [span] }) => span?.harmony);
      expect(symbols).toMatchObject([{ chord: { symbol: 'B' } }, { chord: { symbol: 'B♭' } }]);
    }
  });

  it('do not make H a chord: the nearest guess is B', () => {
    for (const naming of NAMINGS) {
      const lesson = setNoteNames(setChartText(newLesson('lesson', 'Lesson'), PIECE, '| H7 | C |'), naming);
      const [sheet] = deriveSheets(lesson);
      expect(sheet?.kind === 'line' && sheet.problems).toMatchObject([
        {
          line: 1,
          column: 3,
          suggestion: 'B7',
          message:
            '“H7” has an H: in letters the German H is B, and the German B is B♭. German names can be chosen as note names.',
        },
      ]);
    }
  });
});
