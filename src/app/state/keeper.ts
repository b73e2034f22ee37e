import { failure, type Result, shareParts, success } from '../../core/base';
import { endedTitle, type Lesson, setTitle } from '../../core/lesson';
import type { Clock } from '../clock';
import type { Elsewhere, FoundLesson, LessonStorage, News } from '../storage';
import type { EditorStore, SavingState } from './editor-store';
import type { LessonStore } from './lesson-store';
import type { WatchPage } from './page-watch';
import { createSaveTimer } from './save-timer';

/** Time until a refused saving is tried again, in milliseconds; doubled each time up to the longest. */
const FIRST_RETRY = 5000;
const LONGEST_RETRY = 60_000;

const REMOVED =
  'This lesson was removed from this device in another window. Here it still stands: it is kept again with the next change, or save it as a file.';
const BACK = "This browser's storage answers again. The lessons on this device are in Lessons.";
/** What sets the title of this window's lesson apart from that of the other state. */
const apartFrom = (where: Elsewhere): string =>
  where === 'in the folder' ? ' (changed here)' : ' (second window)';

/** The place of the lesson at hand on this device. */
interface Seat {
  /** The lesson as it stands there, or as it came and needs no saving; null when there is none of that. */
  saved: Lesson | null;
  /** The revision of what stands there; null when nothing does. */
  base: string | null;
  /** It is only shown: nothing of it is kept. */
  shown: boolean;
  /** Another window took it off the device, and nothing was changed here since. */
  removed: boolean;
}

interface KeeperParts {
  readonly lessons: LessonStore;
  readonly editor: EditorStore;
  readonly storage: LessonStorage;
  readonly watchPage: WatchPage;
  readonly clock: Clock;
  /** The time of day, in milliseconds since 1970. */
  readonly today: () => number;
  readonly freshId: () => string;
  /** Fetches what is needed to read a lesson; false where that cannot be had. */
  readonly prepare: (lesson: Lesson) => Promise<boolean>;
  /** A lesson now stands on this device. */
  readonly onSaved: (lesson: Lesson) => Promise<void>;
}

/** Keeps the lesson at hand on this device, beside other windows that may be at work on it. */
export interface Keeper {
  /** Saves what is unsaved now; a failure is a sentence. */
  flush(): Promise<Result<null, string>>;
  /**
   * Another lesson is about to be at hand.
   * @param base - its revision on this device, 'as it came' for one that needs no saving while it is not changed,
   * 'only shown' for one that is never saved, or null for one that is to be saved
   */
  seat(lesson: Lesson, base: Base): void;
  /** Whether the lesson at hand is only shown. */
  isOnlyShown(): boolean;
  /** The storage refused something; it is tried again by and by. */
  refused(sentence: string): void;
  stop(): void;
}

export const AS_IT_CAME = 'as it came';
export const ONLY_SHOWN = 'only shown';

/** Where a lesson comes from: its revision on this device, or what {@link Keeper.seat} says of one that has none. */
export type Base = string | typeof AS_IT_CAME | typeof ONLY_SHOWN | null;

export const isOfDevice = (base: Base): boolean =>
  base !== null && base !== AS_IT_CAME && base !== ONLY_SHOWN;

/**
 * Saves the lesson a moment after each change, and at once when the page is hidden or left; what a page that ends cannot
 * wait for is noted, and saved when the lesson is opened next. A window that learns that
 * another one was faster follows it, or goes on with a lesson of its own when it has changes that the other one lacks.
 */
export function startKeeper(parts: KeeperParts): Keeper {
  const { lessons, editor, storage, clock } = parts;
  let seat: Seat = { saved: null, base: null, shown: false, removed: false };
  /** Why nothing can be saved; null while it can. */
  let trouble: string | null = null;
  let retry = FIRST_RETRY;
  let stopRetry = (): void => {};
  let stopped = false;

  const isDirty = (): boolean => !seat.shown && lessons.getState().document !== seat.saved;

  const state = (): SavingState => {
    if (seat.removed) return { kind: 'failed', sentence: REMOVED };
    if (seat.shown) return { kind: 'shown' };
    if (trouble !== null) return { kind: 'failed', sentence: trouble };
    return { kind: isDirty() ? 'unsaved' : 'saved' };
  };
  const show = (): void => {
    if (!stopped) editor.setState({ saving: state() });
  };

  /** One thing at a time: a saving that waits for the storage is not overtaken by the next. */
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <Value>(work: () => Promise<Value>): Promise<Value> => {
    const next = last.then(work, work);
    last = next.catch(() => {});
    return next;
  };

  const works = (): void => {
    trouble = null;
    retry = FIRST_RETRY;
    stopRetry();
  };

  const fails = (sentence: string): void => {
    trouble = sentence;
    stopRetry();
    if (!stopped) stopRetry = clock.after(retry, () => void inTurn(check));
    retry = Math.min(LONGEST_RETRY, retry * 2);
    show();
  };

  /** What was made of the lesson at hand elsewhere: followed, or both are kept. */
  const meet = async (theirs: Exclude<FoundLesson, { kind: 'none' }>): Promise<void> => {
    const where = storage.madeWhere(theirs.revision);
    const canBeRead = theirs.kind === 'lesson' && (await parts.prepare(theirs.lesson));
    const { document: lesson } = lessons.getState();
    const same = canBeRead ? shareParts(lesson, openAs(theirs.lesson, lesson)) : null;
    if (same !== null && (same === lesson || !isDirty())) {
      seat = { saved: same, base: theirs.revision, shown: false, removed: false };
      lessons.follow(same, where);
    } else if (isDirty()) {
      goOnApart(lesson, theirs, where);
    } else {
      // It cannot be read here, so this window stays with what it has until something is changed.
      seat.base = theirs.revision;
      editor.setState({ notice: unreadableFrom(where) });
    }
  };

  const goOnApart = (
    lesson: Lesson,
    theirs: Exclude<FoundLesson, { kind: 'none' }>,
    where: Elsewhere,
  ): void => {
    const theirTitle = theirs.kind === 'lesson' ? theirs.lesson.title : lesson.title;
    // Told apart by their titles, they need no other: one that is being typed stays as it is.
    const title = theirTitle === lesson.title ? endedTitle(lesson.title, apartFrom(where)) : lesson.title;
    seat = { saved: null, base: null, shown: false, removed: false };
    lessons.goOnAs(parts.freshId(), (each) =>
      each.title === lesson.title && title !== lesson.title ? setTitle(each, title) : each,
    );
    editor.setState({ notice: bothAreKept(where, named(title), named(theirTitle)) });
  };

  /** Saves the lesson once; says whether that is done, or a sentence why not. */
  const saveOnce = async (): Promise<Result<null, string>> => {
    timer.begun();
    const mine = seat;
    const { document: lesson } = lessons.getState();
    const result = await storage.save(lesson, mine.base, parts.today());
    if (result.ok) {
      mine.saved = lesson;
      mine.base = result.value;
      mine.removed = false;
      works();
      await parts.onSaved(lesson);
    } else if (result.problem.kind === 'failed') {
      fails(result.problem.sentence);
      return failure(result.problem.sentence);
    } else if (mine === seat) {
      await meet(result.problem.by);
    }
    return success(null);
  };

  const saveAll = async (): Promise<Result<null, string>> => {
    while (isDirty()) {
      const done = await saveOnce();
      if (!done.ok) return done;
    }
    show();
    return success(null);
  };

  /** Holds what stands on the device against what a seat has saved. */
  const compare = async (mine: Seat, found: Exclude<FoundLesson, { kind: 'none' }>): Promise<void> => {
    if (storage.isOwn(found.revision)) mine.base = found.revision;
    else if (found.revision !== mine.base) await meet(found);
  };

  /** Looks at what stands on the device: whether it can be reached, and whether this window is behind. */
  const check = async (): Promise<void> => {
    const mine = seat;
    const found = await storage.load(lessons.getState().lesson.id);
    if (mine !== seat) return;
    if (!found.ok) {
      fails(found.problem);
      return;
    }
    if (found.value.kind === 'none') {
      // The site's data were cleared: what stands here is to be saved again.
      if (mine.base !== null && !mine.removed) mine.saved = null;
      mine.base = null;
    } else {
      // Also one that was removed is there again where another window brought it back.
      mine.removed = false;
      await compare(mine, found.value);
    }
    if (isDirty()) await saveOnce();
    else works();
    show();
  };

  const hear = (news: News): void => {
    const { id } = lessons.getState().lesson;
    switch (news.kind) {
      case 'saved':
        if (news.id === id && news.revision !== seat.base) void inTurn(check);
        break;
      case 'removed':
        if (news.id === id && seat.base !== null) {
          seat.base = null;
          seat.removed = !isDirty();
          show();
        }
        break;
      case 'back':
        if (editor.getState().notice === null) editor.setState({ notice: BACK });
        void inTurn(check);
        break;
      case 'lost':
        void inTurn(check);
        break;
    }
  };

  const timer = createSaveTimer(clock, () => void inTurn(saveChanged));
  const saveChanged = async (): Promise<void> => {
    if (!isDirty()) return;
    await saveOnce();
    if (isDirty() && trouble === null) timer.changed();
    show();
  };

  const flush = (): Promise<Result<null, string>> => {
    timer.begun();
    return inTurn(saveAll);
  };

  const unsubscribe = lessons.subscribe((now, before) => {
    if (now.document === before.document) return;
    if (isDirty()) {
      seat.removed = false;
      timer.changed();
    }
    show();
  });
  const leave = (): void => {
    if (isDirty()) storage.leave(lessons.getState().document, seat.base, parts.today());
    void flush();
  };
  const unwatch = parts.watchPage({ leave, comeBack: () => void inTurn(check) });
  storage.watch((news) => {
    if (!stopped) hear(news);
  });

  return {
    flush,
    seat: (lesson, base) => {
      seat = {
        saved: base === null ? null : lesson,
        base: isOfDevice(base) ? base : null,
        shown: base === ONLY_SHOWN,
        removed: false,
      };
      show();
    },
    isOnlyShown: () => seat.shown,
    refused: fails,
    stop() {
      stopped = true;
      unsubscribe();
      unwatch();
      timer.begun();
      stopRetry();
    },
  };
}

/** What was made of a lesson elsewhere, worked on in the version that this window has open, if it is still there. */
function openAs({ open: _, ...theirs }: Lesson, { open }: Lesson): Lesson {
  return open !== undefined && theirs.versions?.some(({ id }) => id === open) ? { ...theirs, open } : theirs;
}

const named = (title: string): string => (title === '' ? 'the lesson without a title' : `“${title}”`);

const unreadableFrom = (where: Elsewhere): string =>
  `This lesson was changed ${where} by a newer Ground Bass, which this page cannot read. Reload the page to see it. What you change here goes on as a lesson of its own.`;

const bothAreKept = (where: Elsewhere, mine: string, theirs: string): string =>
  `This lesson was changed ${where} while it was changed here. Both are kept: this window goes on with ${
    mine === theirs ? 'a lesson of its own' : mine
  }, and the other state is ${mine === theirs ? '' : `${theirs}, `}in Lessons.`;
