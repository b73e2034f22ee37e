import type { Lesson } from '../../../core/lesson';
import type { Session } from '../../state';

const NOT_LOADED =
  'The part of the page that makes it could not be loaded. Check that the page is still reachable and load it again.';

/** What a browser throws when a part of the page does not come: each has its own words for a TypeError. */
const isNotLoaded = (problem: unknown): boolean =>
  problem instanceof TypeError && /import|module|fetch|load/i.test(problem.message);

const reducedTo = (what: string): string =>
  `${what} holds the lesson as it is shown here: what the note above the sheet names as left out is not in it. Export, Lesson file gives the whole lesson.`;

/**
 * Makes something of the lesson, and says so in the notice when it fails; the lesson is never touched.
 * @param what - is made: `The handout`
 * @param work - gives what the teacher should know about it, if anything
 * @param made - whether it is made of what the page shows, which of a newer copy's lesson may not be all: then it says so
 */
export async function attempt(
  session: Session,
  what: string,
  work: (lesson: Lesson) => Promise<string | null | undefined> | Promise<void>,
  { made = true }: { readonly made?: boolean } = {},
): Promise<void> {
  session.dismissNotice();
  try {
    const said = await work(session.lessons.getState().lesson);
    const reduced =
      made && session.editor.getState().reading?.only?.isReduced === true ? reducedTo(what) : null;
    const notice = [said, reduced].filter(Boolean).join(' ');
    if (notice !== '') session.editor.setState({ notice });
  } catch (problem) {
    const why = isNotLoaded(problem) ? NOT_LOADED : 'The lesson is as it was.';
    session.editor.setState({ notice: `${what} could not be made. ${why}` });
  }
}
