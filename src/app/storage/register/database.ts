import { type DBSchema, type IDBPObjectStore, openDB } from 'idb';
import { isOfDatabase } from '../record-fault';

/** What is stored is not trusted to have the shape it was stored with. */
export interface StoredEntry {
  readonly id: string;
  readonly document: unknown;
}

interface Stores extends DBSchema {
  entries: { key: string; value: StoredEntry };
}

/** What is to be done with the register: records that are written, and ids of those that are deleted. */
export interface RegisterChange {
  readonly put: readonly StoredEntry[];
  readonly gone: readonly string[];
}

/** The register's database in the few things that are asked of it. Each rejects with the browser's error. */
export interface RegisterDatabase {
  /** All records by their ids; null for one that the browser itself cannot read. */
  all(): Promise<ReadonlyMap<string, unknown>>;
  /** Looks at all records and changes some, within one transaction. */
  change(decide: (all: ReadonlyMap<string, unknown>) => RegisterChange): Promise<void>;
  close(): void;
}

const SHAPE = 1;

type EntryStore = Pick<
  IDBPObjectStore<Stores, ['entries'], 'entries', 'readonly' | 'readwrite'>,
  'get' | 'getAllKeys'
>;

/** All records by their ids: one that cannot be read takes none of the others along. */
async function recordsIn(store: EntryStore): Promise<ReadonlyMap<string, unknown>> {
  const keys = await store.getAllKeys();
  return new Map(
    await Promise.all(
      keys.map(async (key) => {
        const record = await store.get(key).catch((fault: unknown) => {
          if (isOfDatabase(fault)) throw fault;
          return null;
        });
        return [key, record ?? null] as const;
      }),
    ),
  );
}

/**
 * Opens the database of the register, which stands apart from that of the lessons: no fault of one reaches the other.
 * @throws the browser's error, as a rejection; it may also never answer
 */
export async function openRegisterDatabase(name: string, onLost: () => void): Promise<RegisterDatabase> {
  const database = await openDB<Stores>(name, SHAPE, {
    upgrade: (fresh) => {
      fresh.createObjectStore('entries', { keyPath: 'id' });
    },
    blocking() {
      database.close();
      onLost();
    },
    terminated: onLost,
  });
  return {
    all: () => recordsIn(database.transaction('entries').store),
    async change(decide) {
      const transaction = database.transaction('entries', 'readwrite');
      const { store } = transaction;
      const work = async () => {
        const { put, gone } = decide(await recordsIn(store));
        await Promise.all([...put.map((entry) => store.put(entry)), ...gone.map((id) => store.delete(id))]);
      };
      await Promise.all([work(), transaction.done]);
    },
    close: () => database.close(),
  };
}
