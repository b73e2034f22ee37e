import { isRecord, type Result } from '../../core/base';
import { type Lesson, readLesson } from '../../core/lesson';
import { isTime } from './read-records';
import type { FoundLesson } from './records';

/*
 * What was not saved yet when the page was left. The browser's database answers later than a page that ends can wait for;
 * what is written here is written at once, and taken in when the lesson is opened next.
 */

const nameOf = (id: string): string => `ground-bass left ${id}`;

/** A browser may refuse this storage by throwing, or be full: what was saved before then stands. */
function guarded<Value>(work: () => Value): Value | null {
  try {
    return work();
  } catch {
    return null;
  }
}

/**
 * Notes a lesson as it stands while its page is left.
 * @param by - the window that is left; what it was saving at that moment is older than this
 * @param base - the revision that it goes on from; null for a lesson that is not on this device yet
 * @param at - milliseconds since 1970
 */
export const noteLeft = (by: string, lesson: Lesson, base: string | null, at: number): void => {
  guarded(() => window.localStorage.setItem(nameOf(lesson.id), JSON.stringify({ by, base, lesson, at })));
};

export const forgetLeft = (id: string): void => {
  guarded(() => window.localStorage.removeItem(nameOf(id)));
};

interface Left {
  readonly lesson: Lesson;
  readonly at: number;
}

/** The noted state that goes on from a revision, where it is a lesson; null where nothing is noted. */
function leftAfter(id: string, revision: string): Left | null {
  return guarded(() => {
    const noted: unknown = JSON.parse(window.localStorage.getItem(nameOf(id)) ?? 'null');
    if (!isRecord(noted) || !isTime(noted.at)) return null;
    if (noted.base !== revision && !revision.startsWith(`${noted.by} `)) return null;
    const read = readLesson(noted.lesson);
    return read.ok && read.value.id === id ? { lesson: read.value, at: noted.at } : null;
  });
}

/**
 * What stands under an id, with what was noted after it when the page was left, which is saved first. A note that goes on
 * from another revision is let go: the lesson was saved since, here or in another window.
 */
export async function withLeft<Problem>(
  id: string,
  found: FoundLesson,
  save: (lesson: Lesson, base: string, savedAt: number) => Promise<Result<string, Problem>>,
): Promise<FoundLesson> {
  if (found.kind !== 'lesson') return found;
  const left = leftAfter(id, found.revision);
  if (left === null) {
    forgetLeft(id);
    return found;
  }
  const saved = await save(left.lesson, found.revision, left.at);
  return saved.ok ? { kind: 'lesson', lesson: left.lesson, revision: saved.value } : found;
}
