import type { Lesson, LessonVersion, Piece } from '../../lesson';

function withoutAnswers(piece: Piece): Piece {
  if (piece.kind !== 'line') return piece;
  const { meant: _, ...rest } = piece;
  return rest;
}

const ofVersion = (version: LessonVersion): LessonVersion => ({
  ...version,
  lines: version.lines.map((line) => {
    const { meant: _, ...own } = line.own;
    const { without, ...rest } = line;
    return {
      ...rest,
      own,
      ...(without === undefined ? {} : { without: without.filter((field) => field !== 'meant') }),
    };
  }),
  ...(version.pieces === undefined ? {} : { pieces: version.pieces.map(withoutAnswers) }),
});

/**
 * A lesson as its students get it: without the findings that its teacher has answered with *I mean it*, in all of its
 * versions. They are between the teacher and the lesson check, and whoever opens the file could read them.
 */
export const forStudent = (lesson: Lesson): Lesson => ({
  ...lesson,
  pieces: lesson.pieces.map(withoutAnswers),
  ...(lesson.versions === undefined ? {} : { versions: lesson.versions.map(ofVersion) }),
});
