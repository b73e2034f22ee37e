import {
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  newLesson,
  type PlayingSettings,
  setChartText,
  setFeel,
  setPlaying,
  setTempo,
} from '../../src/core/lesson';

interface LineText {
  readonly chart?: string;
  readonly feel?: LinePiece['feel'];
  readonly tempo?: number;
  readonly playing?: Partial<PlayingSettings>;
}

/** A lesson whose only piece is a line over a chart, without notes. */
export function lessonOf({ chart = '| C | F | G | C |', feel, tempo, playing = {} }: LineText = {}): Lesson {
  const empty = newLesson('lesson', 'Lesson');
  const id = empty.pieces[0]?.id ?? '';
  const felt = feel === undefined ? empty : setFeel(empty, id, feel);
  const timed = tempo === undefined ? felt : setTempo(felt, id, tempo);
  return setPlaying(setChartText(timed, id, chart), id, playing);
}

/** The only line of a lesson, with its sheet. */
export function lineOf(lesson: Lesson): { readonly piece: LinePiece; readonly sheet: LineSheet } {
  const [piece] = lesson.pieces;
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (piece?.kind !== 'line' || sheet?.kind !== 'line') throw new Error('The lesson has no line');
  return { piece, sheet };
}
