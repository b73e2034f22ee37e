import type { Lesson } from '../../core/lesson';
import type { LessonStore, Versions } from './lesson-store';

export const NO_VERSIONS =
  'What reads the versions of a lesson could not be loaded, so nothing was changed. Check that the page is still reachable and load it again.';

const fetchVersions = (): Promise<Versions> => import('../../core/versions');

/** What reads the versions of a lesson, where it has any; null where it has none. */
export const versionsFor = async (lesson: Lesson): Promise<Versions | null> =>
  lesson.versions === undefined ? null : fetchVersions();

/** Fetches what reads versions where a lesson has any; false where it cannot be had. */
export async function prepareVersions(lessons: LessonStore, lesson: Lesson): Promise<boolean> {
  try {
    const versions = await versionsFor(lesson);
    if (versions !== null) lessons.knowVersions(versions);
    return true;
  } catch {
    return false;
  }
}
