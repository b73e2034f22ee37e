import type { Lesson } from './types';

/** Characters up to which a file has its line breaks and indents, which make it up to six times as long. */
const LONGEST_READABLE = 500_000;

/** The lesson file: JSON that ends with a line break, readable where the lesson is not very long. */
export function printLesson(lesson: Lesson): string {
  const text = JSON.stringify(lesson);
  return `${text.length > LONGEST_READABLE ? text : JSON.stringify(lesson, null, 1)}\n`;
}
