import { counted } from '../../../../core/base';
import type { Session } from '../../../state';
import type { ListedLesson } from '../../../storage';
import { momentText } from '../words';
import { folderOf } from './folder-watch';

/** From so many changes, or changed lessons, since the shelf was last in a file it is reminded of. */
const REMINDED_FROM = { changes: 30, lessons: 10 } as const;

/**
 * What reminds of saving the shelf as a file, where much was changed since and no folder keeps the lessons; null where
 * there is nothing to be reminded of. Changes in one go, with no pause of a moment between them, are one.
 */
export async function reminderOf(session: Session, lessons: readonly ListedLesson[]): Promise<string | null> {
  const [found, folder] = await Promise.all([session.storage.shelfSaved(), folderOf(session)]);
  if (!found.ok || folder.state().kind === 'kept') return null;
  const { at } = found.value;
  const changed = lessons.filter((lesson) => lesson.readable && (at === null || lesson.savedAt > at)).length;
  // What was brought in, renamed or made on the shelf itself is a change of each lesson.
  const changes = Math.max(changed, found.value.changes);
  if (changed === 0 || (changes < REMINDED_FROM.changes && changed < REMINDED_FROM.lessons)) return null;
  const said = `${counted(changes, 'change')} in ${counted(changed, 'lesson')}`;
  return at === null
    ? `${said}, and the shelf was never saved as a file.`
    : `${said} since the shelf was saved as a file (${momentText(at)}).`;
}
