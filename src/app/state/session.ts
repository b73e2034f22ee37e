import type { Result } from '../../core/base';
import { differInUseOnly, type Lesson, whyNotInMetre } from '../../core/lesson';
import { type Clock, pageClock } from '../clock';
import type { Composer } from '../composer';
import type { LessonStorage, RemovedLesson, StartGuard } from '../storage';
import { firstPiece, startAtHand } from './at-hand';
import { fetchChecking, whyNotKeptSoon } from './checking-later';
import { startComposing } from './composing';
import { createEditorStore } from './editor-store';
import { firstLesson } from './first-lesson';
import { freshLessonId } from './fresh-id';
import { isOfDevice, startKeeper } from './keeper';
import { createLessonStore } from './lesson-store';
import { toldOf, whyOnlyShown } from './only-shown';
import { startOpening } from './opening';
import { type WatchPage, watchPage } from './page-watch';
import { startPastLater } from './past-later';
import { prepareVersions, versionsFor } from './versions-later';

/** Notes nothing of what is opened: where no page is to be kept from freezing. */
const NO_GUARD: StartGuard = {
  begin: async () => new Set(),
  opening: () => {},
  drawn: () => {},
  failed: () => {},
};

interface SessionParts {
  readonly guard?: StartGuard;
  readonly watch?: WatchPage;
  readonly clock?: Clock;
}

/**
 * One teacher at work: the document, where in it they are, and its place on this device. Everything the page
 * does to the document goes through here. A sample takes a place on this device once it is changed.
 */
export async function startSession(
  storage: LessonStorage,
  composer: Composer,
  { guard = NO_GUARD, watch = watchPage, clock = pageClock }: SessionParts = {},
) {
  const first = await firstLesson(storage, await guard.begin(), freshLessonId);
  guard.opening(first.name);
  const lessons = createLessonStore(
    first.lesson,
    (notice) => editor.setState({ notice }),
    {
      whyRefused: (next, before) =>
        keeper.isOnlyShown() && !differInUseOnly(next, before)
          ? whyOnlyShown(editor.getState().reading)
          : whyNotInMetre(next, before),
      whyNotKept: (document) => whyNotKeptSoon(document, () => lessons.checkAgain()),
    },
    await versionsFor(first.lesson),
  );
  const prepare = (lesson: Lesson) => prepareVersions(lessons, lesson);
  const editor = createEditorStore(firstPiece(first.lesson));
  /** What is noted on this device as open. */
  let noted = first.noted;
  /** Where it cannot be noted, nothing is lost: the page starts with another lesson the next time. */
  const note = async (name: string): Promise<void> => {
    if (noted === name) return;
    const remembered = await storage.rememberOpened(name);
    if (remembered.ok) noted = name;
  };
  storage.watch((news) => {
    if (news.kind === 'lost') noted = null;
  });
  const keeper = startKeeper({
    lessons,
    editor,
    storage,
    watchPage: ({ leave, comeBack }) =>
      watch({
        leave: () => {
          leave();
          void past.flush();
        },
        comeBack,
      }),
    clock,
    today: Date.now,
    freshId: freshLessonId,
    prepare,
    onSaved: async ({ id }) => {
      if (lessons.getState().lesson.id === id) await note(id);
    },
  });
  keeper.seat(first.lesson, first.base);
  const past = startPastLater({
    lessons,
    storage,
    clock,
    today: Date.now,
    isOnlyShown: keeper.isOnlyShown,
    prepare,
  });
  /** The lesson at hand is one of this device: it is used now, and its history is fetched. */
  const opened = (): void => {
    past.opened();
    void storage.noteUsed(lessons.getState().lesson.id, Date.now());
  };
  if (isOfDevice(first.base)) opened();
  if (first.refused !== null) keeper.refused(first.refused);

  const { choosePiece, chooseBar } = startAtHand(lessons, editor);
  const { makeCopy, ...opening } = startOpening({
    lessons,
    editor,
    storage,
    keeper,
    past,
    guard,
    note,
    opened,
    prepare,
  });
  editor.setState({
    rescue: first.rescue,
    reading: first.newer && toldOf(first.newer.shown, first.newer.sentences, () => void makeCopy()),
  });
  const compose = startComposing({ lessons, editor, composer });

  return {
    lessons,
    editor,
    storage,
    composer,
    composeLine: () => compose('compose line'),
    anotherTake: () => compose('another take'),
    /** Composes several takes to compare, unless `stop` calls it off; the line stays. */
    severalTakes: (stop: AbortSignal) => compose('compose several takes', stop),
    choosePiece,
    chooseBar,
    ...opening,
    dismissNotice: () => editor.setState({ notice: null }),
    /** The teacher has taken note of what was read from a file. */
    dismissReading: () => editor.setState({ reading: null }),
    /** The teacher has taken note of a lesson that was not opened. */
    dismissRescue: () => editor.setState({ rescue: null }),
    /** A name for a new lesson on this device. */
    freshId: freshLessonId,
    /** Takes a lesson other than the one at hand off this device, for `putBack`; a failure is a sentence. */
    async removeSaved(id: string): Promise<Result<RemovedLesson, string>> {
      const done = await storage.remove(id);
      if (done.ok) editor.setState(({ removed }) => ({ removed: [...removed, done.value] }));
      return done;
    },
    /** Puts a removed lesson back; false where another one stands in its place by now. */
    async putBack(lesson: RemovedLesson): Promise<Result<boolean, string>> {
      const done = await storage.putBack(lesson);
      if (done.ok) editor.setState(({ removed }) => ({ removed: removed.filter((each) => each !== lesson) }));
      return done;
    },
    /** Fetches what edits are checked and saved by; where it cannot be had, saving tries again and says so. */
    prepareSaving: () => {
      storage.prepare();
      void fetchChecking();
    },
    saveNow: keeper.flush,
    /** The page has the lesson at hand on it. */
    drawn: guard.drawn,
    /** The page failed with the lesson at hand. */
    failed: guard.failed,
    end: () => {
      keeper.stop();
      past.stop();
    },
  };
}

export type Session = Awaited<ReturnType<typeof startSession>>;
