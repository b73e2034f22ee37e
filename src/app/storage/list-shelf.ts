import { type Result, success } from '../../core/base';
import type { OnShelf } from '../../core/shelf';
import type { Attempt } from './attempts';
import { inOrder, listedLesson, readFacts } from './read-records';
import { isOfDatabase } from './record-fault';
import { isOfNewer, type ListedLesson } from './records';

/** Lessons whose facts are made anew and written at once: what is done stays done when the page is closed. */
const AT_ONCE = 50;

/**
 * Every lesson of the device. What is told of a lesson stands beside it since it was saved; where it is missing or is
 * of another copy of the app, the lesson is read and it is written anew.
 */
export async function listShelf(attempt: Attempt): Promise<Result<readonly ListedLesson[], string>> {
  const stands = await attempt((database) => Promise.all([database.ids(), database.facts()]));
  if (!stands.ok) return stands;
  const [ids, beside] = stands.value;
  const known = new Map<string, OnShelf>();
  for (const each of beside) {
    const facts = readFacts(each);
    if (facts !== null) known.set(facts.id, facts);
  }
  const lessons: ListedLesson[] = [];
  const fresh: OnShelf[] = [];
  const write = async (gone: readonly string[] = []) => {
    const made = fresh.splice(0);
    // Where they cannot be written, they are made again the next time.
    if (made.length + gone.length > 0) await attempt((database) => database.writeFacts(made, gone));
  };
  for (const id of ids) {
    const facts = known.get(id);
    if (facts !== undefined) {
      known.delete(id);
      lessons.push({ ...facts, readable: true });
      continue;
    }
    const read = await attempt(async (database) => {
      // One record that the browser itself cannot read takes none of the others along.
      const record = await database.read(id).catch((fault: unknown) => {
        if (isOfDatabase(fault)) throw fault;
        return null;
      });
      return record === undefined ? null : { lesson: listedLesson(id, record), lasting: !isOfNewer(record) };
    });
    if (!read.ok) return read;
    if (read.value === null) continue;
    const { lesson, lasting } = read.value;
    lessons.push(lesson);
    if (lesson.readable && lasting) {
      const { readable: _, ...facts } = lesson;
      fresh.push(facts);
    }
    if (fresh.length >= AT_ONCE) await write();
  }
  await write([...known.keys()]);
  return success(inOrder(lessons));
}
