import type { Session } from '../state';

/**
 * Opens the lesson in the page's address, if there is one, as a lesson of its own. The address is cleared, so that
 * a reload does not open the link again over what was done since.
 */
export async function openLinkedLesson(session: Session): Promise<void> {
  const { href, pathname, search, hash } = window.location;
  if (hash === '') return;
  const { holdsLesson, readLessonLink } = await import('../../core/exchange');
  if (!holdsLesson(hash)) return;
  const read = readLessonLink(href);
  window.history.replaceState(null, '', pathname + search);
  if (read.ok) await session.openCopy(read.value);
  else session.editor.setState({ notice: read.problem.message });
}
