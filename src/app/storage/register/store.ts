import { failure, isRecord, type Result, success } from '../../../core/base';
import {
  describeEntryProblem,
  type Entry,
  entriesToAdd,
  REGISTER_LIMITS,
  readEntry,
  withoutEntry,
} from '../../../core/students';
import type { Clock } from '../../clock';
import { createAttempts } from '../attempts';
import type { Channel } from '../news';
import type { RegisterChange, RegisterDatabase, StoredEntry } from './database';
import { describeRegisterFault, SILENT } from './faults';

/** What is kept under an id and cannot be read. */
export interface UnreadableEntry {
  readonly id: string;
  /** As far as it can be told. */
  readonly name: string;
  /** Why: a sentence. */
  readonly sentence: string;
}

export interface RegisterList {
  readonly entries: readonly Entry[];
  readonly unreadable: readonly UnreadableEntry[];
}

/**
 * Students, classes and series of this device, beside the lessons and apart from them. An edit is a function that is
 * made on what stands there at that moment, so that no window writes over what another has written.
 */
export interface Register {
  list(): Promise<Result<RegisterList, string>>;
  add(entry: Entry): Promise<Result<null, string>>;
  /**
   * Edits an entry as it stands; what the edit makes is held against the validator first.
   * @param edit - null where it cannot be done, which the caller has words for
   */
  change(id: string, edit: (entry: Entry) => Entry | null): Promise<Result<Entry | null, string>>;
  /**
   * Edits several entries at once, or none of them where the browser refuses.
   * @returns ids of those that were not edited: they are gone, cannot be read, or the edit gave null
   */
  changeEach(
    ids: readonly string[],
    edit: (entry: Entry) => Entry | null,
  ): Promise<Result<readonly string[], string>>;
  /** Deletes an entry, and every mention of it in other entries. */
  remove(id: string): Promise<Result<null, string>>;
  /** Everything as it is kept, whether it can be read or not, for a file. */
  raw(): Promise<Result<readonly unknown[], string>>;
  /** Adds the entries of a file beside what stands here; says how many came. */
  bringIn(entries: readonly Entry[]): Promise<Result<number, string>>;
  /** Calls back when another window has changed something, until the returned function is called. */
  watch(listener: () => void): () => void;
}

export interface RegisterSurroundings {
  readonly open: (onLost: () => void) => Promise<RegisterDatabase>;
  readonly clock: Clock;
  readonly channel: Channel;
}

const GONE = 'It is no longer kept on this device: another window has removed it.';
const TOO_MANY = `More than ${REGISTER_LIMITS.entries} students, classes and series are not kept. Remove some first.`;
const NOTHING: RegisterChange = { put: [], gone: [] };

const documentOf = (record: unknown): unknown => (isRecord(record) ? record.document : undefined);

const stored = (entry: Entry): StoredEntry => ({ id: entry.id, document: entry });

/** What stands under an id, which the entry itself is to have. */
function read(id: string, record: unknown): Result<Entry, string> {
  const found = readEntry(documentOf(record));
  if (!found.ok) return failure(describeEntryProblem(found.problem));
  return found.value.id === id ? found : failure(describeEntryProblem({ kind: 'damaged', where: 'id' }));
}

const nameIn = (record: unknown): string => {
  const document = documentOf(record);
  return isRecord(document) && typeof document.name === 'string' ? document.name : '';
};

/** What of an entry that cannot be read is known of it. */
const calledIn = (record: unknown): Pick<Entry, 'kind' | 'name'> => {
  const document = documentOf(record);
  const isStudent = isRecord(document) && document.kind === 'student';
  return { kind: isStudent ? 'student' : 'class', name: nameIn(record) };
};

export function createRegister({ open, clock, channel }: RegisterSurroundings): Register {
  const listeners = new Set<() => void>();
  const hear = () => {
    for (const listener of listeners) listener();
  };
  const attempt = createAttempts({
    open,
    clock,
    onLost: hear,
    onBack: hear,
    describe: describeRegisterFault,
    silent: SILENT,
  });
  channel.hear(hear);
  const told = (id: string) => channel.tell({ kind: 'saved', id, revision: '' });

  /** Changes the register within one transaction, unless there is a reason not to, which is given. */
  async function transact<Value>(
    id: string,
    decide: (all: ReadonlyMap<string, unknown>) => Result<readonly [RegisterChange, Value], string>,
  ): Promise<Result<Value, string>> {
    const done = await attempt(async (database) => {
      let answer: Result<Value, string> = failure(GONE);
      await database.change((all) => {
        const decided = decide(all);
        answer = decided.ok ? success(decided.value[1]) : decided;
        return decided.ok ? decided.value[0] : NOTHING;
      });
      return answer;
    });
    if (!done.ok) return done;
    if (done.value.ok) told(id);
    return done.value;
  }

  return {
    async list() {
      const found = await attempt((database) => database.all());
      if (!found.ok) return found;
      const entries: Entry[] = [];
      const unreadable: UnreadableEntry[] = [];
      for (const [id, record] of found.value) {
        const entry = read(id, record);
        if (entry.ok) entries.push(entry.value);
        else unreadable.push({ id, name: nameIn(record), sentence: entry.problem });
      }
      return success({ entries, unreadable });
    },
    add: (entry) =>
      transact(entry.id, (all) => {
        if (all.size >= REGISTER_LIMITS.entries) return failure(TOO_MANY);
        const checked = read(entry.id, stored(entry));
        return checked.ok ? success([{ put: [stored(entry)], gone: [] }, null]) : checked;
      }),
    change: (id, edit) =>
      transact<Entry | null>(id, (all) => {
        if (!all.has(id)) return failure(GONE);
        const standing = read(id, all.get(id));
        if (!standing.ok) return standing;
        const edited = edit(standing.value);
        if (edited === null) return success([NOTHING, null]);
        const checked = read(id, stored(edited));
        if (!checked.ok) return checked;
        return success([{ put: edited === standing.value ? [] : [stored(edited)], gone: [] }, edited]);
      }),
    changeEach: (ids, edit) =>
      transact(ids[0] ?? '', (all) => {
        const put: StoredEntry[] = [];
        const refused: string[] = [];
        for (const id of ids) {
          const standing = read(id, all.get(id));
          const edited = standing.ok ? edit(standing.value) : null;
          if (edited === null || !read(id, stored(edited)).ok) refused.push(id);
          else if (!standing.ok || edited !== standing.value) put.push(stored(edited));
        }
        return success([{ put, gone: [] }, refused]);
      }),
    remove: (id) =>
      transact(id, (all) => {
        const put: StoredEntry[] = [];
        const standing = read(id, all.get(id));
        const gone = standing.ok ? standing.value : ({ id, ...calledIn(all.get(id)) } as const);
        for (const [other, record] of all) {
          const entry = read(other, record);
          if (other === id || !entry.ok) continue;
          const without = withoutEntry(entry.value, gone);
          if (without !== entry.value) put.push(stored(without));
        }
        return success([{ put, gone: [id] }, null]);
      }),
    async raw() {
      const found = await attempt((database) => database.all());
      return found.ok ? success([...found.value.values()].map(documentOf)) : found;
    },
    bringIn: (entries) =>
      transact('', (all) => {
        const added = entriesToAdd(entries, (id) => {
          if (!all.has(id)) return null;
          const standing = read(id, all.get(id));
          return standing.ok ? standing.value : 'unreadable';
        });
        return all.size + added.length > REGISTER_LIMITS.entries
          ? failure(TOO_MANY)
          : success([{ put: added.map(stored), gone: [] }, added.length]);
      }),
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
