import { isRecord } from '../../core/base';
import {
  describeLessonProblem,
  describeNewer,
  LESSON_VERSION,
  type Lesson,
  type NewerLesson,
  readLesson,
} from '../../core/lesson';
import { factsOf, isFacts, type KeptState, type OnShelf } from '../../core/shelf';

/** A stored lesson is kept as it came, with just enough beside it to list it without reading it. */
export interface StoredLesson {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** Names the state of the lesson; every save gives it another. Records of earlier copies have none. */
  readonly revision?: string;
  readonly document: unknown;
}

/** An earlier state of a lesson. */
export interface StoredState extends KeptState {
  /** Id of the lesson it is a state of. */
  readonly lesson: string;
  readonly document: unknown;
}

/** What *Undo* takes back and *Redo* brings back. */
export interface StoredHistory {
  /** Of the lesson. */
  readonly id: string;
  readonly history: unknown;
}

/** A lesson on this device as the list shows it. */
export type ListedLesson =
  | ({ readonly readable: true } & OnShelf)
  | {
      readonly readable: false;
      readonly id: string;
      /** As far as it can be told. */
      readonly title: string;
      /** Why it cannot be read: a sentence. */
      readonly sentence: string;
    };

/** What stands on this device under the id of a lesson. */
export type FoundLesson =
  | { readonly kind: 'none' }
  | { readonly kind: 'lesson'; readonly lesson: Lesson; readonly revision: string }
  /** Of a newer copy of the app, as this one can show it: what is said of it, and that it is not written over. */
  | {
      readonly kind: 'newer';
      readonly shown: NewerLesson;
      readonly sentences: readonly string[];
      readonly revision: string;
    }
  | { readonly kind: 'unreadable'; readonly sentence: string; readonly revision: string };

/** The furthest time that a date can be, in milliseconds from 1970 (ECMAScript, 21.4.1.1). */
const FURTHEST = 8.64e15;

const DAMAGED = 'What is kept beside this lesson is damaged. Saved as a file, it can be opened from there.';
const FOREIGN = 'What is kept under this name is no lesson.';

const isTime = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && Math.abs(value) <= FURTHEST;

/** Names the state of a record; one of an earlier copy, which has no name for it, is told by its time. */
export function revisionOf(record: unknown): string {
  if (!isRecord(record)) return 'no record';
  return typeof record.revision === 'string' ? record.revision : `at ${String(record.savedAt)}`;
}

/** The document of a record; the record itself where it has none. */
export const documentOf = (record: unknown): unknown =>
  isRecord(record) && isRecord(record.document) ? record.document : record;

/** Whether a record holds a lesson of a newer copy of the app: such a one is never written over. */
export function isOfNewer(record: unknown): boolean {
  const document = documentOf(record);
  return isRecord(document) && typeof document.version === 'number' && document.version > LESSON_VERSION;
}

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

/** The title that can be made out, else nothing. */
export function titleOf(record: unknown): string {
  const document = documentOf(record);
  const titles = [isRecord(record) ? record.title : null, isRecord(document) ? document.title : null];
  return titles.find((title) => typeof title === 'string') ?? '';
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
