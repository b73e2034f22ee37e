import { type Result, success } from '../../../core/base';
import { DEFAULT_HAND } from '../../../core/fretboard';
import { LESSON_LIMITS, type Lesson } from '../../../core/lesson';
import { forgetStudent, type Given, newStudent, type Student } from '../../../core/students';
import type { Session } from '../../state';
import { loadRegister } from '../../storage';

/** A day in the teacher's own time, as it is kept. */
export function dayNow(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A student who starts from the lesson at hand: its bass, the hand and the level of its first line. */
export function studentLike(lesson: Lesson, id: string, name: string): Student {
  const line = lesson.pieces.find((piece) => piece.kind === 'line');
  const { comfortableSpan, reach } = line?.hand ?? DEFAULT_HAND;
  return newStudent({
    id,
    name,
    instrument: lesson.instrument,
    hand: { comfortableSpan, reach },
    level: line?.level ?? 1,
    noteNames: lesson.noteNames ?? 'letters',
  });
}

/** What of a lesson is given: itself or a version of it, and what both are called. */
export function givingOf(document: Lesson, versionId: string | null): Omit<Given, 'day' | 'tempo' | 'mend'> {
  const version = document.versions?.find(({ id }) => id === versionId);
  return {
    lesson: document.id,
    version: version?.id ?? null,
    title: [document.title, ...(version === undefined ? [] : [version.name])]
      .join(', ')
      .slice(0, LESSON_LIMITS.title),
  };
}

const asLesson = (before: Lesson, changed: unknown): Lesson =>
  // What is forgotten are whom the handout is for and names of versions: what is left is a lesson.
  changed === before ? before : (changed as Lesson);

/**
 * Forgets a student's name in every lesson of this device: in the one at hand with all that can be undone, in those
 * that were removed and can be put back, and in what is kept of the others.
 * @returns the titles of lessons in whose own words the name still stands
 */
export async function forgetEverywhere(
  session: Session,
  name: string,
): Promise<Result<readonly string[], string>> {
  const { lessons, editor } = session;
  const { past, present, future } = lessons.history();
  const documents = [
    present,
    ...past.map(({ document }) => document),
    ...future.map(({ document }) => document),
  ];
  if (documents.some((document) => forgetStudent(name, document) !== document))
    lessons.goOnAs(present.id, (document) => asLesson(document, forgetStudent(name, document)));
  editor.setState(({ removed }) => ({
    removed: removed.map((each) => ({
      ...each,
      lesson: forgetStudent(name, each.lesson),
      facts: undefined,
      states: each.states.map((state) => forgetStudent(name, state)),
      history: forgetStudent(name, each.history),
    })),
  }));
  const kept = await session.saveNow();
  if (!kept.ok) return kept;
  const { forgetStudentInLessons } = await loadRegister();
  const forgotten = await forgetStudentInLessons(name);
  return forgotten.ok ? success(forgotten.value) : forgotten;
}
