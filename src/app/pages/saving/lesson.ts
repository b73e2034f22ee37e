import { type Lesson, printLesson } from '../../../core/lesson';
import type { Session } from '../../state';
import { fileStem, saveFile } from './file';

/**
 * Saves the lesson as a file of its own.
 * @param version - what tells the file from those of other versions, see `versionStem`
 */
export const saveLessonFile = (lesson: Lesson, version = ''): void =>
  saveFile(fileStem(lesson.title) + version, printLesson(lesson), 'lesson');

/** Whom a lesson's file names, which the teacher should know; null for nobody. */
export async function saidOfNames(lesson: Lesson): Promise<string | null> {
  const { namesIn } = await import('../../../core/exchange');
  const names = namesIn(lesson);
  return names.length === 0 ? null : `The file names ${names.join(', ')}.`;
}

/** The title of something that may be a lesson. */
const titleOf = (document: unknown): string =>
  typeof document === 'object' &&
  document !== null &&
  'title' in document &&
  typeof document.title === 'string'
    ? document.title
    : '';

/** Whatever stands on the device, as a text; what JSON cannot hold is told as text. */
function printAnything(document: unknown): string {
  try {
    return `${JSON.stringify(document, null, 1) ?? String(document)}\n`;
  } catch {
    return `${String(document)}\n`;
  }
}

const WHOLE =
  'The file holds the lesson as the newer Ground Bass saved it, also what is left out here; how it is played and printed here is not in it.';

/**
 * Saves the lesson at hand as a file of its own, with all its versions, and the session knows that it is safe. Of one that is only shown it
 * is the lesson as it came.
 * @returns what the teacher should know of the file; null for nothing
 */
export function keepAsFile(session: Session): string | null {
  const { document: lesson } = session.lessons.getState();
  const only = session.editor.getState().reading?.only;
  if (only === undefined) saveLessonFile(lesson);
  else saveAsItIs(only.whole);
  session.keptAsFile(lesson);
  return only === undefined ? null : WHOLE;
}

/** Saves what is kept on this device as a file, whether it can be read as a lesson or not. */
export const saveAsItIs = (document: unknown): void =>
  saveFile(fileStem(titleOf(document)), printAnything(document), 'lesson');

/** The lesson with one of its pieces alone; its title says which. */
export const onlyPiece = (lesson: Lesson, id: string): Lesson => {
  const pieces = lesson.pieces.filter((piece) => piece.id === id);
  return { ...lesson, title: `${lesson.title}: ${pieces[0]?.name ?? ''}`, pieces };
};
