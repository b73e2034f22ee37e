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

/** The longest message that common messengers send in one piece, in characters (common practice, no source). */
const MESSAGE = 4_000;

/** What came of copying a link. */
export interface CopiedLink {
  readonly sentence: string;
  /** What is offered as a file instead; null where the link does. */
  readonly instead: LinkedPage | null;
}

/** What a link opens. */
export type LinkedPage = 'lesson' | 'practice page';

const WHAT: Readonly<Record<LinkedPage, string>> = {
  lesson: 'It holds the whole lesson; whoever opens it gets a copy of their own.',
  'practice page':
    'It holds the whole lesson and opens the practice page, on which nothing of the lesson can be changed.',
};

const FILES: Readonly<Record<LinkedPage, string>> = {
  lesson: 'the lesson file',
  'practice page': 'the practice page as a file',
};

/** What is said of a link of so many characters. */
export function saidOfLink(length: number, page: LinkedPage, copied: boolean): CopiedLink {
  const long = `${length.toLocaleString('en')} characters`;
  if (!copied) {
    return {
      sentence: `This browser does not let the page copy the link. Send ${FILES[page]} instead: it holds the same lesson.`,
      instead: page,
    };
  }
  const sentence = `The link is copied. ${WHAT[page]} It is ${long} long`;
  return length > MESSAGE
    ? {
        sentence: `${sentence}, more than many messengers send in one piece: ${FILES[page]} is the safer way.`,
        instead: page,
      }
    : { sentence: `${sentence}, which fits into a message.`, instead: null };
}

/** The address of the app itself: without a query, and without a lesson. */
const appAddress = (): string => window.location.href.split(/[?#]/)[0] ?? '';

/** Copies a link that holds the whole lesson, and opens it to be written on or to be practised. */
export async function copyLink(lesson: Lesson, page: LinkedPage): Promise<CopiedLink> {
  const { writeLessonLink } = await import('../../../core/exchange');
  const link = writeLessonLink(lesson, page === 'lesson' ? appAddress() : practiceAddress(appAddress()));
  const copied = await navigator.clipboard?.writeText(link).then(
    () => true,
    () => false,
  );
  return saidOfLink(link.length, page, copied === true);
}
