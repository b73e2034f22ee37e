import type { Lesson } from '../../../core/lesson';
import { fileStem, saveFile } from './file';

/**
 * Saves the practice page as one file with the lesson in it: it opens anywhere, without this page and a network.
 * @throws Error when the empty practice page cannot be fetched
 */
export async function savePracticePage(lesson: Lesson): Promise<void> {
  const [{ fillPracticePage }, template] = await Promise.all([
    import('../../../core/exchange'),
    fetchText('./practice-page.html'),
  ]);
  const page = fillPracticePage(template, lesson);
  if (page === null) throw new TypeError('What was fetched is no practice page.');
  saveFile(fileStem(lesson.title), page, 'practice');
}

async function fetchText(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new TypeError(`fetch: ${address} answered ${response.status}`);
  return response.text();
}
