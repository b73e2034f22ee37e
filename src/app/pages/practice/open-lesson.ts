import { failure, type Result, success } from '../../../core/base';
import { holdsLesson, readLessonLink } from '../../../core/exchange';
import { describeLessonProblem, type Lesson, parseLesson } from '../../../core/lesson';

/** Many times the size of a lesson with a logo and many pieces, in bytes. */
const LARGEST_FILE = 5_000_000;
const TOO_LARGE = 'This file is larger than 5 MB, so it is not a lesson.';
const UNREADABLE =
  'This file could not be read. It may have been moved or changed since it was chosen; choose it once more.';

/** Reads a lesson's text; a text that is none gives a sentence. */
export function lessonOfText(text: string): Result<Lesson, string> {
  const read = parseLesson(text);
  return read.ok ? success(read.value) : failure(describeLessonProblem(read.problem));
}

/** Reads a lesson file that was chosen or dropped; whatever it is, a fault is a sentence. */
export async function lessonOfFile(file: File): Promise<Result<Lesson, string>> {
  if (file.size > LARGEST_FILE) return failure(TOO_LARGE);
  try {
    return lessonOfText(await file.text());
  } catch {
    return failure(UNREADABLE);
  }
}

/** Reads the lesson that an address holds; null when it holds none. */
export function lessonOfAddress(address: string): Result<Lesson, string> | null {
  if (!holdsLesson(address)) return null;
  const read = readLessonLink(address);
  return read.ok ? success(read.value) : failure(read.problem.message);
}
