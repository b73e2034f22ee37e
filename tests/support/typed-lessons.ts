/** Lessons of one line as a teacher has typed them, before anything is composed. */
import type { FeelId } from '../../src/core/feel';
import {
  changeLine,
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  newLesson,
  setChartText,
  setFeel,
  setLevel,
} from '../../src/core/lesson';
import type { Level, Technique } from '../../src/core/line';

/** The id of their line. */
export const LINE = 'piece-1';

interface Typed {
  readonly chart: string;
  readonly feel: FeelId;
  readonly level: Level;
  /** What the feel teaches at the level when left out. */
  readonly techniques?: readonly Technique[];
}

/** @param id - of the lesson; another one gives its line another seed */
export function typedLesson(id: string, { chart, feel, level, techniques }: Typed): Lesson {
  const typed = setLevel(setFeel(setChartText(newLesson(id, 'Typed'), LINE, chart), LINE, feel), LINE, level);
  return techniques === undefined ? typed : changeLine(typed, LINE, (piece) => ({ ...piece, techniques }));
}

/** @throws Error where the piece is no line */
export function lineSheetIn(lesson: Lesson, piece: LinePiece | null): LineSheet {
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('The sheet of a line is a line.');
  return sheet;
}
