import { failure, type Result, success } from '../../../../core/base';
import { endedTitle, type Lesson, setTitle } from '../../../../core/lesson';
import type { Session } from '../../../state';

const OVERTAKEN =
  'It was changed in another window at this moment, so it was left as it is there. Try once more.';
const NOT_READABLE = 'It cannot be read by this copy of the app, so it was left as it is.';
const GONE = 'It is no longer on this device.';

/** A lesson of this device as it stands there, with its revision. */
async function load(
  session: Session,
  id: string,
): Promise<Result<{ readonly lesson: Lesson; readonly revision: string }, string>> {
  const found = await session.storage.load(id);
  if (!found.ok) return found;
  if (found.value.kind === 'none') return failure(GONE);
  return found.value.kind === 'lesson' ? success(found.value) : failure(NOT_READABLE);
}

/** Gives a lesson of the shelf another title; the one at hand as a step that *Undo* takes back. */
export async function rename(session: Session, id: string, title: string): Promise<Result<null, string>> {
  if (session.lessons.getState().lesson.id === id) {
    session.lessons.changeDocument((document) => setTitle(document, title), { label: 'change the title' });
    return session.saveNow();
  }
  const found = await load(session, id);
  if (!found.ok) return found;
  const { lesson, revision } = found.value;
  const saved = await session.storage.save(setTitle(lesson, title), revision, Date.now());
  if (saved.ok) return success(null);
  return failure(saved.problem.kind === 'failed' ? saved.problem.sentence : OVERTAKEN);
}

const COPY = ' (copy)';

/** Puts a copy of a lesson on the shelf; gives its id. */
export async function copy(session: Session, id: string): Promise<Result<string, string>> {
  const kept = await session.saveNow();
  if (!kept.ok) return kept;
  const found = await load(session, id);
  if (!found.ok) return found;
  const { lesson } = found.value;
  const made = { ...lesson, id: session.freshId(), title: endedTitle(lesson.title, COPY) };
  const saved = await session.storage.save(made, null, Date.now());
  if (saved.ok) return success(made.id);
  return failure(saved.problem.kind === 'failed' ? saved.problem.sentence : OVERTAKEN);
}

/** A lesson of this device as it is seen when it is opened, in the version that was open last; null where it cannot be read. */
export async function lessonAsOpened(session: Session, id: string): Promise<Lesson | null> {
  const found = await load(session, id);
  if (!found.ok) return null;
  const { lesson } = found.value;
  if (lesson.versions === undefined) return lesson;
  const { lessonAsOpen } = await import('../../../../core/versions');
  return lessonAsOpen(lesson);
}
