import { failure, type Result, success } from '../../../core/base';
import { holdsLesson, readLessonLink } from '../../../core/exchange';
import {
  describeLessonProblem,
  describeNewer,
  type Lesson,
  type LessonProblem,
  parseLesson,
} from '../../../core/lesson';
import type { FileReader } from '../../reader';

/** Many times the size of a lesson with a logo and many pieces, in bytes. */
const LARGEST_FILE = 5_000_000;
const TOO_LARGE = 'This file is larger than 5 MB, so it is not a lesson.';
const UNREADABLE =
  'This file could not be read. It may have been moved or changed since it was chosen; choose it once more.';

/** Why a file that was being read was not. */
const UNREAD = {
  'called off': 'The file was not read any further.',
  silent:
    'Reading this file came to no end, so it was given up. Perhaps it is not the lesson file that your teacher sent.',
} as const;

/** A lesson to be practised, and what is to be said of it: of a newer copy of the app only what this one knows is shown. */
export interface OpenedLesson {
  readonly lesson: Lesson;
  readonly said: string | null;
}

function openedOf(read: Result<Lesson, LessonProblem>): Result<OpenedLesson, string> {
  if (read.ok) return success({ lesson: read.value, said: null });
  const { problem } = read;
  if (problem.kind !== 'newer' || problem.shown === null) return failure(describeLessonProblem(problem));
  const [whence = '', leftOut = ''] = describeNewer(problem.shown, problem.version);
  return success({ lesson: problem.shown.lesson, said: `${whence} ${leftOut}` });
}

/** Reads a lesson's text; a text that is none gives a sentence. */
export const lessonOfText = (text: string): Result<OpenedLesson, string> => openedOf(parseLesson(text));

/**
 * Reads a lesson file that was chosen or dropped; whatever it is, a fault is a sentence.
 * @param reader - reads it beside the page; null where the page has none. A page that may start no worker, as in some
 *   frames, reads it itself
 */
export async function lessonOfFile(
  file: File,
  reader: FileReader | null,
): Promise<Result<OpenedLesson, string>> {
  if (file.size > LARGEST_FILE) return failure(TOO_LARGE);
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const read = await reader?.readLesson(bytes);
    if (read?.ok) return openedOf(read.value);
    if (read === undefined || read.problem === 'failed') return lessonOfText(new TextDecoder().decode(bytes));
    return failure(UNREAD[read.problem]);
  } catch {
    return failure(UNREADABLE);
  }
}

/** Reads the lesson that an address holds; null when it holds none. */
export function lessonOfAddress(address: string): Result<OpenedLesson, string> | null {
  if (!holdsLesson(address)) return null;
  const read = readLessonLink(address);
  if (read.ok) return openedOf(read);
  const { message, found } = read.problem;
  return found === undefined ? failure(message) : openedOf(failure(found));
}
