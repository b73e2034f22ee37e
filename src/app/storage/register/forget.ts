import { type IDBPDatabase, openDB } from 'idb';
import { isRecord } from '../../../core/base';
import { forgetStudent, isNamedIn } from '../../../core/students';
import { chanceName } from '../chance-name';
import { type Channel, openChannel } from '../news';
import { documentOf, titleOf } from '../records';

/** Passes over what is kept: what is written while a pass runs is met by the next one. */
const MOST_PASSES = 5;

/** What of a lesson may name a student: the record of it, its earlier states and its history. */
const STORES = ['lessons', 'states', 'histories'] as const;

/** Forgets a name in one record; says whether it stood there. */
async function forgetInRecord(
  kept: IDBPDatabase,
  store: (typeof STORES)[number],
  key: IDBValidKey,
  name: string,
  channel: Channel,
): Promise<boolean> {
  const transaction = kept.transaction(['facts', store], 'readwrite');
  const records = transaction.objectStore(store);
  const record: unknown = await records.get(key).catch(() => undefined);
  const without = forgetStudent(name, record);
  const isChanged = without !== record && isRecord(without);
  if (isChanged && store === 'lessons') {
    const revision = chanceName();
    await records.put({ ...without, revision });
    // What is told of the lesson is made anew when the shelf is listed next.
    await transaction.objectStore('facts').delete(key);
    if (typeof key === 'string') channel.tell({ kind: 'saved', id: key, revision });
  } else if (isChanged) await records.put(without);
  await transaction.done;
  return isChanged;
}

/** Goes once over everything; says whether the name stood anywhere. */
async function pass(kept: IDBPDatabase, name: string, channel: Channel): Promise<boolean> {
  let found = false;
  for (const store of STORES)
    for (const key of await kept.getAllKeys(store))
      found = (await forgetInRecord(kept, store, key, name, channel)) || found;
  return found;
}

/** The titles of lessons in whose own words a name stands: title, notes, names of pieces, words over bars, charts. */
async function mentions(kept: IDBPDatabase, name: string): Promise<readonly string[]> {
  const mentioned: string[] = [];
  for (const key of await kept.getAllKeys('lessons')) {
    const record: unknown = await kept.get('lessons', key).catch(() => undefined);
    if (isNamedIn(name, documentOf(record))) mentioned.push(titleOf(record));
  }
  return mentioned;
}

/**
 * Forgets a student's name in every lesson of this device, in their earlier states and in what *Undo* takes back.
 * Windows that have a changed lesson open are told of it.
 * @param database - the name of the lessons' database
 * @returns the titles of lessons in whose own words the name still stands
 * @throws the browser's error, as a rejection
 */
export async function forgetInLessons(database: string, name: string): Promise<readonly string[]> {
  const kept = await openDB(database);
  try {
    if (!STORES.every((store) => kept.objectStoreNames.contains(store))) return [];
    const channel = openChannel(database);
    for (let passes = 0; passes < MOST_PASSES; passes += 1) if (!(await pass(kept, name, channel))) break;
    return await mentions(kept, name);
  } finally {
    kept.close();
  }
}
