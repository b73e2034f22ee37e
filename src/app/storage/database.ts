import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { StoredLesson } from './records';

/** What is stored is not trusted to have the shape it was stored with. */
interface Shelf extends DBSchema {
  lessons: { key: string; value: StoredLesson };
  settings: { key: string; value: string };
}

/** The browser's database in the few things the storage asks of it. Each rejects with the browser's error. */
export interface Database {
  ids(): Promise<readonly string[]>;
  /** The record under an id; undefined where there is none. */
  read(id: string): Promise<unknown>;
  /** Looks at the record under an id and writes another in its place, or none, within one transaction. */
  update(id: string, decide: (found: unknown) => StoredLesson | null): Promise<void>;
  remove(id: string): Promise<void>;
  setting(name: string): Promise<unknown>;
  writeSetting(name: string, value: string): Promise<void>;
  close(): void;
}

/**
 * Opens the browser's database.
 * @param onLost - the database was closed or is about to be deleted: the site's data were cleared, or a newer copy of
 * the app wants to change its shape
 * @throws the browser's error, as a rejection; it may also never answer
 */
export async function openDatabase(name: string, onLost: () => void): Promise<Database> {
  const database: IDBPDatabase<Shelf> = await openDB<Shelf>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('lessons', { keyPath: 'id' });
      fresh.createObjectStore('settings');
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
      const transaction = database.transaction('lessons', 'readwrite');
      const work = async () => {
        const record = decide(await transaction.store.get(id));
        if (record !== null) await transaction.store.put(record);
      };
      await Promise.all([work(), transaction.done]);
    },
    remove: (id) => database.delete('lessons', id),
    setting: (setting) => database.get('settings', setting),
    writeSetting: async (setting, value) => {
      await database.put('settings', value, setting);
    },
    close: () => database.close(),
  };
}
