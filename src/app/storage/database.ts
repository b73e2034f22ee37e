import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { OnShelf } from '../../core/shelf';
import type { StoredHistory, StoredLesson, StoredState } from './records';

/** What is stored is not trusted to have the shape it was stored with. */
interface Shelf extends DBSchema {
  lessons: { key: string; value: StoredLesson };
  settings: { key: string; value: string };
  /** What is told of each lesson on the shelf: derived, and made anew where it is missing. */
  facts: { key: string; value: OnShelf };
  /** Earlier states of lessons. */
  states: { key: string; value: StoredState; indexes: { lesson: string } };
  /** What *Undo* takes back, of each lesson. */
  histories: { key: string; value: StoredHistory };
}

/** A lesson with what is told of it, written together. */
export interface LessonWithFacts {
  readonly record: StoredLesson;
  readonly facts: OnShelf;
}

/** Everything that was kept of a lesson, as it was taken off the device. */
export interface Removed {
  readonly id: string;
  readonly lesson: unknown;
  readonly facts: unknown;
  readonly states: readonly unknown[];
  readonly history: unknown;
}

/** The browser's database in the few things the storage asks of it. Each rejects with the browser's error. */
export interface Database {
  ids(): Promise<readonly string[]>;
  /** The record under an id; undefined where there is none. */
  read(id: string): Promise<unknown>;
  /** Looks at the record under an id and writes another in its place, or none, within one transaction. */
  update(id: string, decide: (found: unknown) => LessonWithFacts | null): Promise<void>;
  /** Takes a lesson and all that is kept of it off the device, in one transaction. */
  remove(id: string): Promise<Removed>;
  /** Puts back what was taken off, unless something else stands there by now; says whether it did. */
  putBack(removed: Removed): Promise<boolean>;
  facts(): Promise<readonly unknown[]>;
  /** Writes facts, and takes away those of lessons that are gone. */
  writeFacts(facts: readonly OnShelf[], gone: readonly string[]): Promise<void>;
  /** Looks at the facts of a lesson and writes others in their place, or none. */
  updateFacts(id: string, decide: (found: unknown) => OnShelf | null): Promise<void>;
  /** The earlier states of a lesson. */
  states(id: string): Promise<readonly unknown[]>;
  writeState(state: StoredState, letGo: readonly string[]): Promise<void>;
  history(id: string): Promise<unknown>;
  writeHistory(history: StoredHistory): Promise<void>;
  setting(name: string): Promise<unknown>;
  writeSetting(name: string, value: string): Promise<void>;
  close(): void;
}

/** Rises with every new store; an older copy of the app then says that its page is to be loaded anew. */
const SHAPE = 2;

const OF_A_LESSON = ['lessons', 'facts', 'states', 'histories'] as const;

/**
 * Opens the browser's database.
 * @param onLost - the database was closed or is about to be deleted: the site's data were cleared, or a newer copy of
 * the app wants to change its shape
 * @throws the browser's error, as a rejection; it may also never answer
 */
export async function openDatabase(name: string, onLost: () => void): Promise<Database> {
  const database: IDBPDatabase<Shelf> = await openDB<Shelf>(name, SHAPE, {
    upgrade(fresh, before) {
      if (before < 1) {
        fresh.createObjectStore('lessons', { keyPath: 'id' });
        fresh.createObjectStore('settings');
      }
      fresh.createObjectStore('facts', { keyPath: 'id' });
      fresh.createObjectStore('states', { keyPath: 'key' }).createIndex('lesson', 'lesson');
      fresh.createObjectStore('histories', { keyPath: 'id' });
    },
    blocking() {
      database.close();
      onLost();
    },
    terminated: onLost,
  });
  return {
    ids: () => database.getAllKeys('lessons'),
    read: (id) => database.get('lessons', id),
    update: async (id, decide) => {
      const transaction = database.transaction(['lessons', 'facts'], 'readwrite');
      const lessons = transaction.objectStore('lessons');
      const work = async () => {
        const kept = decide(await lessons.get(id));
        if (kept === null) return;
        await Promise.all([lessons.put(kept.record), transaction.objectStore('facts').put(kept.facts)]);
      };
      await Promise.all([work(), transaction.done]);
    },
    remove: async (id) => {
      const transaction = database.transaction(OF_A_LESSON, 'readwrite');
      const lessons = transaction.objectStore('lessons');
      const facts = transaction.objectStore('facts');
      const states = transaction.objectStore('states');
      const histories = transaction.objectStore('histories');
      const own = states.index('lesson');
      const work = async (): Promise<Removed> => {
        const [lesson, told, earlier, keys, history] = await Promise.all([
          lessons.get(id).catch(() => undefined),
          facts.get(id),
          own.getAll(id),
          own.getAllKeys(id),
          histories.get(id),
        ]);
        await Promise.all([
          lessons.delete(id),
          facts.delete(id),
          histories.delete(id),
          ...keys.map((key) => states.delete(key)),
        ]);
        return { id, lesson, facts: told, states: earlier, history };
      };
      const [removed] = await Promise.all([work(), transaction.done]);
      return removed;
    },
    putBack: async ({ id, lesson, facts, states, history }) => {
      const transaction = database.transaction(OF_A_LESSON, 'readwrite');
      const work = async (): Promise<boolean> => {
        if (lesson === undefined || (await transaction.objectStore('lessons').getKey(id)) !== undefined)
          return false;
        // What was taken off goes back as it was, whether it can be read or not.
        await transaction.objectStore('lessons').put(lesson as StoredLesson);
        if (facts !== undefined) await transaction.objectStore('facts').put(facts as OnShelf);
        if (history !== undefined) await transaction.objectStore('histories').put(history as StoredHistory);
        for (const state of states) await transaction.objectStore('states').put(state as StoredState);
        return true;
      };
      const [done] = await Promise.all([work(), transaction.done]);
      return done;
    },
    facts: () => database.getAll('facts'),
    writeFacts: async (facts, gone) => {
      const transaction = database.transaction('facts', 'readwrite');
      await Promise.all([
        ...facts.map((each) => transaction.store.put(each)),
        ...gone.map((id) => transaction.store.delete(id)),
        transaction.done,
      ]);
    },
    updateFacts: async (id, decide) => {
      const transaction = database.transaction('facts', 'readwrite');
      const work = async () => {
        const facts = decide(await transaction.store.get(id));
        if (facts !== null) await transaction.store.put(facts);
      };
      await Promise.all([work(), transaction.done]);
    },
    states: (id) => database.getAllFromIndex('states', 'lesson', id),
    writeState: async (state, letGo) => {
      const transaction = database.transaction('states', 'readwrite');
      await Promise.all([
        transaction.store.put(state),
        ...letGo.map((key) => transaction.store.delete(key)),
        transaction.done,
      ]);
    },
    history: (id) => database.get('histories', id),
    writeHistory: async (history) => {
      await database.put('histories', history);
    },
    setting: (setting) => database.get('settings', setting),
    writeSetting: async (setting, value) => {
      await database.put('settings', value, setting);
    },
    close: () => database.close(),
  };
}
