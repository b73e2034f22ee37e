import { type Result, success } from '../../core/base';
import { type Lesson, readLesson } from '../../core/lesson';
import { type KeptState, statesToLetGo } from '../../core/shelf';
import type { Attempt } from './attempts';
import type { Database } from './database';
import type { StoredState } from './records';

/** An earlier state of a lesson; null for a lesson where it cannot be read any more. */
export interface EarlierState extends KeptState {
  readonly lesson: Lesson | null;
}

/** What was before: earlier states of lessons, and what *Undo* takes back. */
export interface PastStorage {
  /** The earlier states of a lesson, the latest first. */
  earlierStates(id: string): Promise<Result<readonly EarlierState[], string>>;
  /**
   * Keeps a state of a lesson, unless the latest that is kept is the same; the oldest are let go.
   * @param at - milliseconds since 1970
   * @param before - what it is kept before; null where a new day began
   */
  keepState(lesson: Lesson, at: number, before: string | null): Promise<Result<null, string>>;
  /** What was kept with {@link writeHistory}, whatever stands there; undefined where nothing does. */
  readHistory(id: string): Promise<Result<unknown, string>>;
  /** Keeps it, a moment after the last of a run of changes, which is counted as one change of the shelf. */
  writeHistory(id: string, history: unknown): Promise<Result<null, string>>;
  /** When the shelf was saved as a file last, and what was changed since. */
  shelfSaved(): Promise<Result<ShelfSaved, string>>;
  noteShelfSaved(at: number): Promise<Result<null, string>>;
}

/** How long the shelf goes without being saved as a file. */
export interface ShelfSaved {
  /** Milliseconds since 1970; null for never. */
  readonly at: number | null;
  /** Runs of changes to lessons since. */
  readonly changes: number;
}

const SHELF_SAVED = 'shelf saved';
/** Counted beside the saving since which they are: a later saving begins at none. */
const CHANGES_SINCE = 'changes since';

async function shelfSaved(database: Database): Promise<ShelfSaved & { readonly since: string }> {
  const [noted, counted] = [await database.setting(SHELF_SAVED), await database.setting(CHANGES_SINCE)];
  const since = typeof noted === 'string' ? noted : '';
  const at = since === '' ? Number.NaN : Number(since);
  const [of, count] = typeof counted === 'string' ? counted.split(' ') : [];
  const changes = of === since ? Number(count) : 0;
  return {
    since,
    at: Number.isFinite(at) ? at : null,
    changes: Number.isSafeInteger(changes) && changes > 0 ? changes : 0,
  };
}

const isState = (value: unknown): value is StoredState =>
  typeof value === 'object' &&
  value !== null &&
  'key' in value &&
  typeof value.key === 'string' &&
  'at' in value &&
  typeof value.at === 'number' &&
  Number.isFinite(value.at) &&
  'before' in value &&
  (value.before === null || typeof value.before === 'string') &&
  'document' in value;

const latestFirst = (states: readonly unknown[]): readonly StoredState[] =>
  states.filter(isState).sort((one, other) => other.at - one.at);

const isSameDay = (one: number, other: number): boolean =>
  new Date(one).toDateString() === new Date(other).toDateString();

export const createPast = (attempt: Attempt): PastStorage => ({
  async earlierStates(id) {
    const found = await attempt((database) => database.states(id));
    if (!found.ok) return found;
    return success(
      latestFirst(found.value).map(({ key, at, before, document }) => {
        const read = readLesson(document);
        return { key, at, before, lesson: read.ok ? { ...read.value, id } : null };
      }),
    );
  },
  async keepState(lesson, at, before) {
    const done = await attempt(async (database) => {
      const states = latestFirst(await database.states(lesson.id));
      const [latest] = states;
      // A lesson that is opened several times a day has one state of that day.
      if (before === null && states.some((each) => each.before === null && isSameDay(each.at, at))) return;
      if (latest !== undefined && JSON.stringify(latest.document) === JSON.stringify(lesson)) return;
      const state = { key: `${lesson.id} ${at}`, lesson: lesson.id, at, before, document: lesson };
      await database.writeState(state, statesToLetGo([...states, state]));
    });
    return done.ok ? success(null) : done;
  },
  readHistory: (id) =>
    attempt(async (database) => {
      const found = await database.history(id);
      return typeof found === 'object' && found !== null && 'history' in found ? found.history : undefined;
    }),
  async writeHistory(id, history) {
    const done = await attempt(async (database) => {
      await database.writeHistory({ id, history });
      const { since, changes } = await shelfSaved(database);
      await database.writeSetting(CHANGES_SINCE, `${since} ${changes + 1}`);
    });
    return done.ok ? success(null) : done;
  },
  async shelfSaved() {
    const found = await attempt(shelfSaved);
    return found.ok ? success({ at: found.value.at, changes: found.value.changes }) : found;
  },
  async noteShelfSaved(at) {
    const done = await attempt((database) => database.writeSetting(SHELF_SAVED, String(at)));
    return done.ok ? success(null) : done;
  },
});
