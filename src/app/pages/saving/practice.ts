import type { Lesson } from '../../../core/lesson';
import type { Session } from '../../state';
import { fileStem } from './file';
import { type MadeFile, saveMade } from './made';
import { versionStem } from './version-stem';

/**
 * The practice page as one file with the lesson in it: it opens anywhere, without this page and a network.
 * @throws Error when the empty practice page cannot be fetched
 */
export async function practicePageOf(lesson: Lesson): Promise<MadeFile> {
  const [{ fillPracticePage, forNobody }, template] = await Promise.all([
    import('../../../core/exchange'),
    fetchText('./practice-page.html'),
  ]);
  const page = fillPracticePage(template, forNobody(lesson));
  if (page === null) throw new TypeError('What was fetched is no practice page.');
  return { stem: fileStem(lesson.title), kind: 'practice', content: page };
}

/**
 * Saves the {@link practicePageOf practice page}.
 * @param session - where it is one of the version on the page alone, from whose others its file is told apart
 */
export async function savePracticePage(lesson: Lesson, session?: Session): Promise<void> {
  const file = await practicePageOf(lesson);
  saveMade({ ...file, stem: file.stem + (session === undefined ? '' : await versionStem(session)) });
}

async function fetchText(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new TypeError(`fetch: ${address} answered ${response.status}`);
  return response.text();
}
