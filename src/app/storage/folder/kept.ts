import { type DBSchema, openDB } from 'idb';
import { isRecord } from '../../../core/base';
import type { Settled } from '../../../core/shelf';

/** What is noted on this device of the folder that the lessons are kept in. */
export interface KeptFolder {
  readonly folder: FileSystemDirectoryHandle;
  readonly settled: readonly Settled[];
}

interface Stores extends DBSchema {
  kept: { key: string; value: unknown };
}

const NAME = 'ground-bass folder';
const KEY = 'folder';

const database = () =>
  openDB<Stores>(NAME, 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('kept');
    },
    blocking: (_now, _wanted, event) => {
      if (event.target instanceof IDBDatabase) event.target.close();
    },
  });

const isSettled = (value: unknown): value is Settled =>
  isRecord(value) &&
  typeof value.id === 'string' &&
  typeof value.file === 'string' &&
  typeof value.mark === 'number';

/** The folder that was chosen on this device, or null. */
export async function readKept(): Promise<KeptFolder | null> {
  const opened = await database();
  const found = await opened.get('kept', KEY);
  opened.close();
  if (!isRecord(found) || !isRecord(found.folder)) return null;
  const { settled } = found;
  return {
    folder: found.folder as unknown as FileSystemDirectoryHandle,
    settled: Array.isArray(settled) ? settled.filter(isSettled) : [],
  };
}

/** Notes the folder and what both sides agree on; null forgets it. */
export async function writeKept(kept: KeptFolder | null): Promise<void> {
  const opened = await database();
  if (kept === null) await opened.delete('kept', KEY);
  else await opened.put('kept', kept, KEY);
  opened.close();
}
