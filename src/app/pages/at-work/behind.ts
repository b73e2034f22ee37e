import type { Lesson, LinePiece } from '../../../core/lesson';

/** Whether two records are the same but for some fields. */
const sameBut = <Value extends object>(fields: ReadonlySet<string>, one: Value, other: Value): boolean =>
  Object.entries({ ...one, ...other }).every(
    ([name]) => fields.has(name) || Reflect.get(one, name) === Reflect.get(other, name),
  );

const PIECES = new Set<keyof Lesson>(['pieces']);

const NOTES = new Set<keyof LinePiece>(['bars']);

/** What typing a chart changes of a piece; the aims of bars follow it, too, and are fields of their own. */
const CHART = new Set<keyof LinePiece>(['chartText', 'bars', 'parked', 'sections', 'parkedSections']);

const sameLessonBut = (
  one: Lesson,
  other: Lesson,
  sameLine: (line: LinePiece, before: LinePiece) => boolean,
): boolean =>
  one.pieces.length === other.pieces.length &&
  sameBut(PIECES, one, other) &&
  one.pieces.every((piece, index) => {
    const before = other.pieces[index];
    if (piece === before) return true;
    return piece.kind === 'line' && before?.kind === 'line' && sameLine(piece, before);
  });

/** Whether two lessons are the same but for notes within the same bars. */
export const differInNotesAlone = (one: Lesson, other: Lesson): boolean =>
  sameLessonBut(
    one,
    other,
    (line, before) => line.bars.length === before.bars.length && sameBut(NOTES, line, before),
  );

/**
 * The lesson as it is this moment, for fields that show neither notes nor chart: as it was a moment ago while these
 * alone are another, so that nobody who types waits for the fields. Whatever else was changed beside them shows at
 * once: a field that is written anew a moment later, under someone who types into it, loses what was typed.
 */
export const butNotes = (lesson: Lesson, settled: Lesson): Lesson =>
  sameLessonBut(lesson, settled, (line, before) => sameBut(CHART, line, before)) ? settled : lesson;
