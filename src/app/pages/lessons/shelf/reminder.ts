import { counted } from '../../../../core/base';
import type { Session } from '../../../state';
import type { ListedLesson } from '../../../storage';
import { momentText } from '../words';
import { folderOf } from './folder-watch';

/** Lessons changed since the shelf was last in a file, from which on it is reminded of. */
const REMINDED_FROM = 10;

/**
 * What reminds of saving the shelf as a file, where much was changed since and no folder keeps the lessons; null where
 * there is nothing to be reminded of.
 */
export async function reminderOf(session: Session, lessons: readonly ListedLesson[]): Promise<string | null> {
  const [found, folder] = await Promise.all([session.storage.shelfSavedAt(), folderOf(session)]);
  if (!found.ok || folder.state().kind === 'kept') return null;
  const at = found.value;
  const changed = lessons.filter((lesson) => lesson.readable && (at === null || lesson.savedAt > at)).length;
  if (changed < REMINDED_FROM) return null;
  return at === null
    ? `${counted(changed, 'lesson')}, and the shelf was never saved as a file.`
    : `${counted(changed, 'lesson')} changed since the shelf was saved as a file (${momentText(at)}).`;
}
