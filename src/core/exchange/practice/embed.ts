import type { Lesson } from '../../lesson';
import { forStudent } from './for-student';

/** Where the lesson goes in the practice page that is a single file; the file's script finds it by its id. */
const LESSON_PLACE = '<script type="application/json" id="lesson"></script>';

/**
 * Signs that could end the element or mean something to a reader of markup. In JSON they occur within strings only,
 * where an escape of the same sign may stand for them (RFC 8259, section 7).
 */
const MARKUP = /[<>&\u2028\u2029]/g;

const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

/**
 * Puts a lesson into the practice page that is a single file. Nothing that was typed into the lesson can become
 * markup: it stands in a data block that is never run, without a sign that could end the block. What is the teacher's
 * alone stays behind.
 * @param template the page as it was built, with {@link LESSON_PLACE} in it
 * @returns null when the template has no place for a lesson
 */
export function fillPracticePage(template: string, lesson: Lesson): string | null {
  const at = template.indexOf(LESSON_PLACE);
  if (at < 0) return null;
  const json = JSON.stringify(forStudent(lesson)).replace(MARKUP, escaped);
  const before = LESSON_PLACE.indexOf('</');
  return (
    template.slice(0, at) +
    LESSON_PLACE.slice(0, before) +
    json +
    LESSON_PLACE.slice(before) +
    template.slice(at + LESSON_PLACE.length)
  );
}

/**
 * The lesson's text out of a practice page that is a single file, as {@link fillPracticePage} made it: the data block is
 * found and read as text, and nothing of the page is run.
 * @returns null where there is no such block
 */
export function lessonInPage(page: string): string | null {
  const end = LESSON_PLACE.indexOf('</');
  const at = page.indexOf(LESSON_PLACE.slice(0, end));
  if (at < 0) return null;
  const from = at + end;
  const to = page.indexOf(LESSON_PLACE.slice(end), from);
  const text = to < 0 ? '' : page.slice(from, to);
  return text.trim() === '' ? null : text;
}
