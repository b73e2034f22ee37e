import { type Lesson, lineRequest, readPiece } from '../../lesson';
import { LEVELS, levelLimits, measuredLevel } from '../../line';

/** A lesson whose line is at the level that it was measured to have, with the sentence that says so. */
interface AtItsLevel {
  readonly lesson: Lesson;
  readonly sentences: readonly string[];
}

/** Measures the line of a lesson that was just read; one without notes stays as it is. */
export function atItsLevel(lesson: Lesson): AtItsLevel {
  const [piece] = lesson.pieces;
  if (piece?.kind !== 'line' || piece.bars.every(({ notes }) => notes.length === 0)) {
    return { lesson, sentences: [] };
  }
  const { chart, key } = readPiece(piece);
  const line = piece.bars.map(({ notes }) => notes);
  const measured = measuredLevel(lineRequest(piece, chart, key, lesson.instrument), line);
  const { notesPerSecond } = measured;
  // Where the file says at which fret a note is played, the level's part of the neck reaches it.
  const highest = Math.max(0, ...line.flat().map(({ pins }) => pins?.fret ?? 0));
  const level =
    LEVELS.find((each) => each >= measured.level && levelLimits(each).highestFret >= highest) ??
    LEVELS[LEVELS.length - 1] ??
    measured.level;
  const busiest = Math.round(notesPerSecond * 10) / 10;
  return {
    lesson: { ...lesson, pieces: [{ ...piece, level }] },
    sentences: [
      `By its notes the line is of level ${level} (${levelLimits(level).words}); its busiest bar has ${busiest} notes a second.`,
    ],
  };
}
