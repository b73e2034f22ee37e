import { type Lesson, printLesson } from '../../../core/lesson';
import type { Session } from '../../state';
import { practiceAddress } from '../common';
import { fileStem, saveFile } from './file';

/** Saves the lesson as a file of its own. */
export const saveLessonFile = (lesson: Lesson): void =>
  saveFile(fileStem(lesson.title), printLesson(lesson), 'lesson');

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
 * Saves the lesson at hand as a file of its own, and the session knows that it is safe. Of one that is only shown it
 * is the lesson as it came.
 * @returns what the teacher should know of the file; null for nothing
 */
export function keepAsFile(session: Session, lesson: Lesson): string | null {
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

/** Addresses of this length are to be let through everywhere (RFC 9110, 4.1); mail programs cut longer ones. */
const SAFE_LINK = 8_000;
const COPIED = 'The link is copied. It holds the whole lesson; whoever opens it gets a copy of their own.';
const LONG_LINK =
  'It is long, and some mail programs cut long links off: the lesson file is the safer way to send it.';
const NO_CLIPBOARD =
  'This browser does not let the page copy the link. Send the lesson file instead: it holds the same lesson.';

const COPIED_FOR_PRACTICE =
  'The link is copied. It holds the whole lesson and opens the practice page, on which nothing of the lesson can be changed.';

/** The address of the app itself: without a query, and without a lesson. */
const appAddress = (): string => window.location.href.split(/[?#]/)[0] ?? '';

/**
 * Copies a link that holds the whole lesson, and opens it to be written on or to be practised.
 * @returns what came of it, for the teacher
 */
export async function copyLink(lesson: Lesson, page: 'lesson' | 'practice page'): Promise<string> {
  const { writeLessonLink } = await import('../../../core/exchange');
  const link = writeLessonLink(lesson, page === 'lesson' ? appAddress() : practiceAddress(appAddress()));
  const copied = page === 'lesson' ? COPIED : COPIED_FOR_PRACTICE;
  try {
    await navigator.clipboard.writeText(link);
  } catch {
    return NO_CLIPBOARD;
  }
  return link.length > SAFE_LINK ? `${copied} ${LONG_LINK}` : copied;
}
