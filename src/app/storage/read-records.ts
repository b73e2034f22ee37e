import { isRecord } from '../../core/base';
import { describeLessonProblem, describeNewer, type Lesson, readLesson } from '../../core/lesson';
import { factsOf, isFacts, type OnShelf } from '../../core/shelf';
import { documentOf, type FoundLesson, type ListedLesson, revisionOf, titleOf } from './records';

/** The furthest time that a date can be, in milliseconds from 1970 (ECMAScript, 21.4.1.1). */
const FURTHEST = 8.64e15;

const DAMAGED = 'What is kept beside this lesson is damaged. Saved as a file, it can be opened from there.';
const FOREIGN = 'What is kept under this name is no lesson.';

export const isTime = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && Math.abs(value) <= FURTHEST;

/** Reads what stands under an id; undefined stands for nothing. */
export function foundLesson(record: unknown): FoundLesson {
  if (record === undefined) return { kind: 'none' };
  const revision = revisionOf(record);
  const read = readLesson(documentOf(record));
  if (read.ok) return { kind: 'lesson', lesson: read.value, revision };
  const { problem } = read;
  return problem.kind === 'newer' && problem.shown !== null
    ? {
        kind: 'newer',
        shown: problem.shown,
        sentences: describeNewer(problem.shown, problem.version),
        revision,
      }
    : { kind: 'unreadable', sentence: describeLessonProblem(problem), revision };
}

/** A lesson as it is told of on the shelf. */
export const factsBeside = (lesson: Lesson, savedAt: number, usedAt = savedAt): OnShelf => ({
  id: lesson.id,
  title: lesson.title,
  savedAt,
  usedAt,
  facts: factsOf(lesson),
});

/** Facts as they were stored; null for anything else. */
export const readFacts = (value: unknown): OnShelf | null =>
  isRecord(value) &&
  typeof value.id === 'string' &&
  typeof value.title === 'string' &&
  isTime(value.savedAt) &&
  isTime(value.usedAt) &&
  isFacts(value.facts)
    ? {
        id: value.id,
        title: value.title,
        savedAt: value.savedAt,
        usedAt: value.usedAt,
        facts: value.facts,
      }
    : null;

/** A record as the list shows it, whatever it is. */
export function listedLesson(id: string, record: unknown): ListedLesson {
  const title = titleOf(record);
  if (!isRecord(record) || !isRecord(record.document))
    return { id, title, readable: false, sentence: FOREIGN };
  if (typeof record.title !== 'string' || !isTime(record.savedAt))
    return { id, title, readable: false, sentence: DAMAGED };
  const found = foundLesson(record);
  if (found.kind === 'unreadable') return { id, title, readable: false, sentence: found.sentence };
  if (found.kind === 'none') return { id, title, readable: false, sentence: FOREIGN };
  const { savedAt } = record;
  const lesson = found.kind === 'lesson' ? found.lesson : found.shown.lesson;
  return { id, title, readable: true, savedAt, usedAt: savedAt, facts: factsOf(lesson) };
}

/** In the order of the list: those used last come first, those that cannot be read at the end. */
export const inOrder = (lessons: readonly ListedLesson[]): readonly ListedLesson[] =>
  [...lessons].sort((one, other) => timeOf(other) - timeOf(one));

const timeOf = (lesson: ListedLesson): number => (lesson.readable ? lesson.usedAt : -FURTHEST);
