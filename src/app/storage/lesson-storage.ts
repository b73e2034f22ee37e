import { failure, type Result, success } from '../../core/base';
import type { Lesson, LessonProblem } from '../../core/lesson';
import { type Clock, pageClock } from '../clock';
import { createAttempts } from './attempts';
import { chanceName } from './chance-name';
import { type Database, openDatabase, type Removed } from './database';
import { type Channel, type News, openChannel, type Told } from './news';
import type { PastStorage } from './past';
import type { Keeping, Persistence } from './persistence';
import { documentOf, type FoundLesson, isOfNewer, type ListedLesson, revisionOf, titleOf } from './records';

/** Why a lesson was not saved: another window has changed it since, or a sentence. */
export type SaveProblem =
  | { readonly kind: 'overtaken'; readonly by: Exclude<FoundLesson, { readonly kind: 'none' }> }
  | { readonly kind: 'failed'; readonly sentence: string };

/** A lesson that was taken off the device. */
export interface RemovedLesson extends Removed {
  /** As far as it can be told. */
  readonly title: string;
}

/** The browser's storage as the app sees it; every failure is a sentence, none loses a lesson, none is waited for for ever. */
export interface LessonStorage extends PastStorage {
  /** All lessons, the one used last first, those that cannot be read at the end. */
  list(): Promise<Result<readonly ListedLesson[], string>>;
  load(id: string): Promise<Result<FoundLesson, string>>;
  /** What was noted last with `rememberOpened`, or null, and the lesson of that name. */
  loadLast(): Promise<Result<{ readonly name: string | null; readonly found: FoundLesson }, string>>;
  /** What is kept under an id, as it is, whether it can be read or not. */
  raw(id: string): Promise<Result<unknown, string>>;
  /**
   * Saves a lesson in place of the state it came from.
   * @param base - the revision it was loaded or saved with last; null for a lesson that is not on this device yet
   * @param savedAt - milliseconds since 1970
   * @returns the new revision
   */
  save(lesson: Lesson, base: string | null, savedAt: number): Promise<Result<string, SaveProblem>>;
  /**
   * Saves a state that came from the folder, unless something was changed since `base`, also in this window, which
   * meets it as the folder's. Its parameters are those of {@link save}.
   */
  take(lesson: Lesson, base: string | null, savedAt: number): Promise<Result<string, SaveProblem>>;
  /**
   * The page is left with a lesson that is not saved: it is noted where that is done at once, and saved when it is opened next.
   * Its parameters are those of {@link save}.
   */
  leave(lesson: Lesson, base: string | null, at: number): void;
  /** Whether a revision was given by this window: then it is behind nobody. */
  isOwn(revision: string): boolean;
  /** Where the state of a revision was made that is not this window's. */
  madeWhere(revision: string): Elsewhere;
  /** Takes a lesson off this device with all that is kept of it, which is given back for {@link putBack}. */
  remove(id: string): Promise<Result<RemovedLesson, string>>;
  /** Puts back what was removed; false where something else stands in its place by now. */
  putBack(removed: Removed): Promise<Result<boolean, string>>;
  /** Notes on the shelf that a lesson was opened, at a time in milliseconds since 1970. */
  noteUsed(id: string, at: number): Promise<Result<null, string>>;
  rememberOpened(name: string): Promise<Result<null, string>>;
  /** Fetches what reads and writes lessons, so that the first saving does not wait for it. */
  prepare(): void;
  /** Whether the browser has agreed to keep the lessons. */
  persistence(): Promise<Persistence>;
  /** Calls back with what other windows do, and when the storage is lost or answers again, until the returned function is called. */
  watch(listener: (news: News) => void): () => void;
}

/** What the storage stands on. */
export interface Surroundings {
  readonly open: (onLost: () => void) => Promise<Database>;
  readonly clock: Clock;
  readonly channel: Channel;
  /** Fetched when the browser is first asked for it. */
  readonly keeping: () => Promise<Keeping>;
  /** A name that no other window has. */
  readonly window: string;
}

const LAST_OPENED = 'last opened';

/** How revisions begin that came from the folder; those of windows begin with digits and letters alone. */
const FROM_FOLDER = 'folder-';

/** Where a lesson was changed that stands open in a window, as it is said. */
export type Elsewhere = 'in another window' | 'in the folder';

type Behind = typeof import('./behind');

let fetched: Behind | null = null;

/** Fetches what the first look does without; null where it cannot be had. */
async function fetchBehind(): Promise<Behind | null> {
  fetched ??= await import('./behind').catch(() => null);
  return fetched;
}

/** A browser may not fetch again what it could not fetch once (HTML, module map): only the page loaded anew does. */
const NOT_LOADED =
  'A part of the page could not be loaded. Check that the page is still reachable and load it again.';

const NOT_SAVED =
  'What saves lessons could not be loaded, so nothing is kept on this device. Save the lesson as a file; then check that the page is still reachable and load it again.';

/** Fetches what the first look does without, and asks it. */
async function behind<Value>(
  ask: (part: Behind) => Promise<Result<Value, string>>,
): Promise<Result<Value, string>> {
  const part = await fetchBehind();
  return part === null ? failure(NOT_LOADED) : ask(part);
}

const NOTHING: FoundLesson = { kind: 'none' };

/** Why a lesson is not saved that no page would open again. */
const notReadable = (problem: LessonProblem): string =>
  `The lesson is not saved as it stands now, because it could not be opened again${problem.kind === 'damaged' ? `: ${problem.where}, ${problem.what}` : ''}. Take the last change back, or save the lesson as a file.`;

export function createLessonStorage({ open, clock, channel, keeping, window }: Surroundings): LessonStorage {
  const listeners = new Set<(news: News) => void>();
  const say = (news: News): void => {
    for (const listener of listeners) listener(news);
  };
  const tell = (news: Told): void => channel.tell(news);
  const attempt = createAttempts({
    open,
    clock,
    onLost: () => say({ kind: 'lost' }),
    onBack: () => say({ kind: 'back' }),
  });
  channel.hear(say);
  let saves = 0;
  const isOwn = (revision: string): boolean => revision.startsWith(`${window} `);
  const saveAs = async (
    [lesson, base, savedAt]: Parameters<LessonStorage['save']>,
    saver: string,
  ): Promise<Result<string, SaveProblem>> => {
    const part = await fetchBehind();
    if (part === null) return failure({ kind: 'failed', sentence: NOT_SAVED });
    const { factsBeside, forgetLeft, foundLesson, readLesson, whyNotKept } = part;
    // What was held against the validator part by part, as it was edited, is not read all over.
    const checked = whyNotKept(lesson) === null ? success(lesson) : readLesson(lesson);
    if (!checked.ok) return failure({ kind: 'failed', sentence: notReadable(checked.problem) });
    saves += 1;
    const { id, title } = lesson;
    const revision = `${saver} ${saves}`;
    const facts = factsBeside(lesson, savedAt);
    const done = await attempt(async (database) => {
      let overtaken: SaveProblem | null = null;
      await database.update(id, (record) => {
        const stands = revisionOf(record);
        const isBehind = record !== undefined && stands !== base && !(saver === window && isOwn(stands));
        const by = isBehind || isOfNewer(record) ? foundLesson(record) : NOTHING;
        if (by.kind === 'none') return { record: { id, title, savedAt, revision, document: lesson }, facts };
        overtaken = { kind: 'overtaken', by };
        return null;
      });
      return overtaken;
    });
    if (!done.ok) return failure({ kind: 'failed', sentence: done.problem });
    if (done.value !== null) return failure(done.value);
    forgetLeft(id);
    tell({ kind: 'saved', id, revision });
    keeping().then(
      (promise) => promise.ask(),
      () => {},
    );
    return success(revision);
  };
  const save: LessonStorage['save'] = (...saved) => saveAs(saved, window);
  /** Where nothing stands, what reads a lesson is not fetched: a first visit has nothing to be read. */
  const load = async (id: string): Promise<Result<FoundLesson, string>> => {
    const record = await attempt((database) => database.read(id));
    if (!record.ok) return record;
    if (record.value === undefined) return success(NOTHING);
    return behind(async ({ foundLesson, withLeft }) => {
      const found = await attempt(async () => foundLesson(record.value));
      return found.ok ? success(await withLeft(id, found.value, save)) : found;
    });
  };

  return {
    earlierStates: (id) => behind(({ createPast }) => createPast(attempt).earlierStates(id)),
    keepState: (...given) => behind(({ createPast }) => createPast(attempt).keepState(...given)),
    readHistory: (id) => behind(({ createPast }) => createPast(attempt).readHistory(id)),
    writeHistory: (...given) => behind(({ createPast }) => createPast(attempt).writeHistory(...given)),
    shelfSaved: () => behind(({ createPast }) => createPast(attempt).shelfSaved()),
    noteShelfSaved: (at) => behind(({ createPast }) => createPast(attempt).noteShelfSaved(at)),
    isOwn,
    madeWhere: (revision) => (revision.startsWith(FROM_FOLDER) ? 'in the folder' : 'in another window'),
    list: () => behind(({ listShelf }) => listShelf(attempt)),
    load,
    async loadLast() {
      const name = await attempt((database) => database.setting(LAST_OPENED));
      if (!name.ok) return name;
      if (typeof name.value !== 'string') return success({ name: null, found: NOTHING });
      // What reads the lesson comes while the lesson does.
      void fetchBehind();
      const found = await load(name.value);
      return found.ok ? success({ name: name.value, found: found.value }) : found;
    },
    raw: (id) => attempt(async (database) => documentOf(await database.read(id))),
    save,
    take: (...taken) => saveAs(taken, `${FROM_FOLDER}${window}`),
    leave: (...unsaved) => fetched?.noteLeft(window, ...unsaved),
    async remove(id) {
      const done = await attempt((database) => database.remove(id));
      if (!done.ok) return done;
      tell({ kind: 'removed', id });
      return success({ ...done.value, title: titleOf(done.value.lesson) });
    },
    async putBack(removed) {
      const done = await attempt((database) => database.putBack(removed));
      if (done.ok && done.value)
        tell({ kind: 'saved', id: removed.id, revision: revisionOf(removed.lesson) });
      return done;
    },
    noteUsed: (id, at) =>
      behind(async ({ readFacts }) => {
        const done = await attempt((database) =>
          database.updateFacts(id, (found) => {
            const facts = readFacts(found);
            return facts === null ? null : { ...facts, usedAt: at };
          }),
        );
        return done.ok ? success(null) : done;
      }),
    async rememberOpened(name) {
      const done = await attempt((database) => database.writeSetting(LAST_OPENED, name));
      return done.ok ? success(null) : done;
    },
    prepare: () => void fetchBehind(),
    persistence: () =>
      keeping().then(
        (promise) => promise.state(),
        () => 'unknown',
      ),
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Opens the browser's storage; without one, everything still works and every save says why it failed. */
export const openStorage = (name = 'ground-bass'): LessonStorage =>
  createLessonStorage({
    open: (onLost) => openDatabase(name, onLost),
    clock: pageClock,
    channel: openChannel(name),
    keeping: async () => {
      const part = await fetchBehind();
      if (part === null) throw new Error(NOT_LOADED);
      return part.browserKeeping();
    },
    window: chanceName(),
  });
