import { EMPTY_RECORD, type PracticeRecord, parseRecord } from '../../core/practising';

/** One entry of its own, beside everything that the app keeps; no lesson is within its reach. */
const KEY = 'practice-record';

/** What a device remembers of its student. It never throws: where the browser keeps nothing, nothing is remembered. */
export interface StudentStore {
  /** What is remembered; empty where that is nothing, or cannot be read. */
  read(): PracticeRecord;
  /** @returns whether it is kept */
  write(record: PracticeRecord): boolean;
  /** Forgets everything. */
  clear(): void;
}

const attempt = <Value>(what: () => Value, otherwise: Value): Value => {
  try {
    return what();
  } catch {
    return otherwise;
  }
};

export const studentStore: StudentStore = {
  read: () =>
    attempt(() => {
      const text = window.localStorage.getItem(KEY);
      return text === null ? EMPTY_RECORD : (parseRecord(text) ?? EMPTY_RECORD);
    }, EMPTY_RECORD),
  write: (record) =>
    attempt(() => {
      window.localStorage.setItem(KEY, JSON.stringify(record));
      return true;
    }, false),
  clear: () => attempt(() => window.localStorage.removeItem(KEY), undefined),
};
