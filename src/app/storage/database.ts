import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { failure, type Result, success } from '../../core/base';
import { describeLessonProblem, type Lesson, readLesson } from '../../core/lesson';

/** A stored lesson is kept as it came, with just enough beside it to list it without reading it. */
interface StoredLesson {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly document: unknown;
}

interface Shelf extends DBSchema {
  lessons: { key: string; value: StoredLesson };
  settings: { key: string; value: string };
}

export interface ListedLesson {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
}

/** The browser's database as the app sees it; every failure is a sentence, and none loses a lesson. */
export interface LessonStorage {
  /** All lessons, the one saved last first. */
  list(): Promise<Result<readonly ListedLesson[], string>>;
  load(id: string): Promise<Result<Lesson, string>>;
  /** `savedAt` in milliseconds since 1970. */
  save(lesson: Lesson, savedAt: number): Promise<Result<null, string>>;
  remove(id: string): Promise<Result<null, string>>;
  /** What was noted last with `rememberOpened`, or null. */
  lastOpened(): Promise<Result<string | null, string>>;
  rememberOpened(opened: string): Promise<Result<null, string>>;
}

const NO_DATABASE =
  'This browser does not let the page keep lessons (a private window, or storage is switched off). Save the lesson as a file before you close the page.';
const FULL =
  'The room this browser gives the page is full. Save the lesson as a file, then remove lessons you no longer need (Lessons, Remove a lesson).';

/**
 * What a refusal of the browser's database means to the teacher; the name of the error of a full one is that of the
 * Storage Standard and the Indexed Database API.
 */
export const describeStorageFault = (fault: unknown): string =>
  fault instanceof Error && fault.name === 'QuotaExceededError' ? FULL : NO_DATABASE;

/** Opens the browser's database; without one, everything still works and every save says why it failed. */
export function openStorage(name = 'ground-bass'): LessonStorage {
  let opened: Promise<IDBPDatabase<Shelf>> | null = null;
  const shelf = (): Promise<IDBPDatabase<Shelf>> => {
    opened ??= openDB<Shelf>(name, 1, {
      upgrade(database) {
        database.createObjectStore('lessons', { keyPath: 'id' });
        database.createObjectStore('settings');
      },
      terminated() {
        opened = null;
      },
    });
    return opened;
  };

  const attempt = async <Value>(
    work: (database: IDBPDatabase<Shelf>) => Promise<Value>,
  ): Promise<Result<Value, string>> => {
    try {
      return success(await work(await shelf()));
    } catch (fault) {
      opened = null;
      return failure(describeStorageFault(fault));
    }
  };

  return {
    async list() {
      const found = await attempt((database) => database.getAll('lessons'));
      return found.ok
        ? success(
            found.value
              .map(({ id, title, savedAt }) => ({ id, title, savedAt }))
              .sort((one, other) => other.savedAt - one.savedAt),
          )
        : found;
    },
    async load(id) {
      const found = await attempt((database) => database.get('lessons', id));
      if (!found.ok) {
        return found;
      }
      if (found.value === undefined) {
        return failure('This lesson is no longer on this device.');
      }
      const lesson = readLesson(found.value.document);
      return lesson.ok ? lesson : failure(describeLessonProblem(lesson.problem));
    },
    save: (lesson, savedAt) =>
      attempt(async (database) => {
        await database.put('lessons', { id: lesson.id, title: lesson.title, savedAt, document: lesson });
        return null;
      }),
    remove: (id) =>
      attempt(async (database) => {
        await database.delete('lessons', id);
        return null;
      }),
    lastOpened: () => attempt(async (database) => (await database.get('settings', 'last opened')) ?? null),
    rememberOpened: (opened) =>
      attempt(async (database) => {
        await database.put('settings', opened, 'last opened');
        return null;
      }),
  };
}
