import type { Lesson } from '../../core/lesson';
import { isLargeStep, isWorthKeeping } from '../../core/shelf';
import type { Clock } from '../clock';
import type { LessonStorage } from '../storage';
import { type LessonState, type LessonStore, stepElsewhere } from './lesson-store';
import { keptHistory, readHistory } from './stored-history';

/** Quiet time after a change before the history is kept, in milliseconds: the lesson itself is saved long before. */
const PAUSE = 1500;

/** Time after a lesson was opened before its history is fetched, in milliseconds: the sheet comes first. */
const AFTER_OPENING = 400;

/** Names of steps that were not made in this window. */
const ELSEWHERE: ReadonlySet<string | null> = new Set([
  stepElsewhere('in another window'),
  stepElsewhere('in the folder'),
]);

export interface PastKeeperParts {
  readonly lessons: LessonStore;
  readonly storage: LessonStorage;
  readonly clock: Clock;
  /** The time of day, in milliseconds since 1970. */
  readonly today: () => number;
  /** Whether nothing of the lesson at hand is kept. */
  readonly isOnlyShown: () => boolean;
  /** Fetches what is needed to read a lesson; false where that cannot be had. */
  readonly prepare: (lesson: Lesson) => Promise<boolean>;
}

/** Keeps what was before: states of the lesson at hand, and the steps that *Undo* takes back. */
export interface PastKeeper {
  /** The lesson at hand stands on this device: its history is fetched. */
  opened(): void;
  /** Keeps the history now, before the page is left or another lesson takes its place. */
  flush(): Promise<void>;
  stop(): void;
}

/** The lesson's state after a change, and before it. */
export type Changed = readonly [now: LessonState, before: LessonState];

/** How the step is called that led from one state to the next. */
function stepName(now: LessonState, before: LessonState): string {
  if (before.undoLabel !== null && now.redoLabel === before.undoLabel)
    return `taking back “${before.undoLabel}”`;
  return now.undoLabel ?? 'a change';
}

const dayOf = (time: number): string => new Date(time).toDateString();

/**
 * Nothing here is waited for, and where the storage refuses it the lesson itself is told to be unsaved: earlier states
 * are a second net under it, never the first.
 * @param missed - what was changed before this was here, in its order
 */
export function startPastKeeper(parts: PastKeeperParts, missed: readonly Changed[] = []): PastKeeper {
  const { lessons, storage, clock, today } = parts;
  let stopped = false;
  let stopTimer = (): void => {};
  let stopFetch = (): void => {};
  let dirty = false;
  /** The day of the last change to the lesson at hand; null before the first. */
  let day: string | null = null;

  const flush = async (): Promise<void> => {
    stopTimer();
    if (!dirty || parts.isOnlyShown()) return;
    dirty = false;
    const { lesson } = lessons.getState();
    const history = keptHistory(lessons.history());
    if (history !== null) await storage.writeHistory(lesson.id, history);
  };

  const fetchHistory = async (): Promise<void> => {
    const { lesson, opening } = lessons.getState();
    const found = await storage.readHistory(lesson.id);
    if (!found.ok) return;
    /** Read for the lesson as it is by now; null where another one is at hand. */
    const read = () => {
      const now = lessons.getState();
      if (stopped || now.opening !== opening || now.lesson.id !== lesson.id) return null;
      const { past, present } = lessons.history();
      return readHistory(found.value, past[0]?.document ?? present);
    };
    let history = read();
    // A step may lead to a document with versions where the one at hand has none.
    const versioned = [...(history?.past ?? []), ...(history?.future ?? [])].find(
      ({ document }) => document.versions !== undefined,
    );
    if (versioned !== undefined) history = (await parts.prepare(versioned.document)) ? read() : null;
    if (history !== null) lessons.remember(history);
  };

  const follow = (now: LessonState, before: LessonState): void => {
    if (now.opening !== before.opening) {
      day = null;
      dirty = false;
      stopFetch();
      return;
    }
    if (now.document === before.document || parts.isOnlyShown()) return;
    dirty = true;
    stopTimer();
    stopTimer = clock.after(PAUSE, () => void flush());
    if (now.lesson.id !== before.lesson.id || !isWorthKeeping(before.lesson)) return;
    const time = today();
    const isNewDay = day !== dayOf(time);
    day = dayOf(time);
    if (isLargeStep(before, now, ELSEWHERE.has(now.undoLabel)))
      void storage.keepState(before.document, time, stepName(now, before));
    else if (isNewDay) void storage.keepState(before.document, time, null);
  };
  for (const [now, before] of missed) follow(now, before);
  const unsubscribe = lessons.subscribe(follow);

  return {
    opened: () => {
      stopFetch();
      stopFetch = clock.after(AFTER_OPENING, () => void fetchHistory());
    },
    flush,
    stop: () => {
      stopped = true;
      stopTimer();
      stopFetch();
      unsubscribe();
    },
  };
}
