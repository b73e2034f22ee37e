import { loadChecking } from '../../core/lesson';
import type { Session } from '../state';

const NOT_READ =
  'The link in the address could not be read, because a part of the page did not load. Check that the page is still reachable and load it again.';

/**
 * Opens the lesson in the page's address, if there is one, as a lesson of its own. The address is cleared, so that
 * a reload does not open the link again over what was done since; it stays while the lesson could not be opened.
 */
export async function openLinkedLesson(session: Session): Promise<void> {
  const { href, pathname, search, hash } = window.location;
  if (hash === '') return;
  const exchange = await import('../../core/exchange').catch(() => null);
  if (exchange === null) {
    session.editor.setState({ notice: NOT_READ });
    return;
  }
  const { holdsLesson, readLessonLink } = exchange;
  if (!holdsLesson(hash)) return;
  const read = readLessonLink(href);
  const found = read.ok ? undefined : read.problem.found;
  if (found?.kind === 'newer' && found.shown !== null) {
    const checking = await loadChecking().catch(() => null);
    if (checking === null) {
      session.editor.setState({ notice: NOT_READ });
      return;
    }
    const sentences = checking.describeNewer(found.shown, found.version);
    if (!(await session.openNewer(found.shown, sentences))) return;
  } else if (!read.ok) session.editor.setState({ notice: read.problem.message });
  else if (!(await session.openCopy(read.value))) return;
  window.history.replaceState(null, '', pathname + search);
}
