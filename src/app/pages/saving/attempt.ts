import type { Lesson } from '../../../core/lesson';
import type { Session } from '../../state';

const NOT_LOADED =
  'The part of the page that makes it could not be loaded. Check that the page is still reachable and try again.';

/** What a browser throws when a part of the page does not come: each has its own words for a TypeError. */
const isNotLoaded = (problem: unknown): boolean =>
  problem instanceof TypeError && /import|module|fetch|load/i.test(problem.message);

/**
 * Makes something of the lesson, and says so in the notice when it fails; the lesson is never touched.
 * @param what - is made: `The handout`
 * @param work - gives what the teacher should know about it, if anything
 */
export async function attempt(
  session: Session,
  what: string,
  work: (lesson: Lesson) => Promise<string | null | undefined> | Promise<void>,
): Promise<void> {
  session.dismissNotice();
  try {
    const notice = await work(session.lessons.getState().lesson);
    if (notice) session.editor.setState({ notice });
  } catch (problem) {
    const why = isNotLoaded(problem) ? NOT_LOADED : 'The lesson is as it was.';
    session.editor.setState({ notice: `${what} could not be made. ${why}` });
  }
}
