import { type Result, shareParts } from '../../core/base';
import {
  describeLessonProblem,
  describeNewer,
  differInUseOnly,
  type Lesson,
  type LessonProblem,
  type NewerLesson,
  newLesson,
  sampleLesson,
  whyNotInMetre,
  whyNotKept,
} from '../../core/lesson';
import { type Clock, pageClock } from '../clock';
import type { Composer, Deed } from '../composer';
import type { LessonStorage, StartGuard } from '../storage';
import { type Earlier, earlierStateOf } from './earlier';
import { createEditorStore, type FileReading } from './editor-store';
import { firstLesson, sampleMark } from './first-lesson';
import { AS_IT_CAME, ONLY_SHOWN, startKeeper } from './keeper';
import { type Change, createLessonStore, type Versions } from './lesson-store';
import { type WatchPage, watchPage } from './page-watch';
import { startPastLater } from './past-later';

const firstPiece = (lesson: Lesson): string => lesson.pieces[0]?.id ?? '';

/**
 * A name for a new lesson on this device that no other lesson has: 128 bits of chance. A host without HTTPS has no
 * `crypto.randomUUID`.
 */
const freshLessonId = (): string =>
  `lesson-${[...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;

const NOT_OPENED =
  'The lesson at hand could not be saved on this device, so nothing was opened. Save it as a file first (Export, Lesson file).';

const GONE = 'This lesson is no longer on this device.';

const AS_IT_IS =
  'It stays on this device as it is; save it as a file, or remove it (Lessons, The whole shelf).';

const BRINGING_BACK = 'bring back an earlier state';

const NOT_CHANGED =
  'This lesson is of a newer Ground Bass and is only shown here, so it was not changed. Make a copy to change it (the button stands above the sheet).';

const NOT_OF_NOW =
  'This is an earlier state of the lesson and is only shown, so it was not changed. Bring it back or make a copy of it first (the buttons stand above the sheet).';

/** Why what is only shown is not changed. */
const whyOnlyShown = (reading: FileReading | null): string =>
  reading?.only?.earlier === undefined ? NOT_CHANGED : NOT_OF_NOW;
const NO_VERSIONS =
  'What reads the versions of a lesson could not be loaded, so nothing was changed. Check that the page is still reachable and try again.';

const fetchVersions = (): Promise<Versions> => import('../../core/versions');

const NO_COMPOSER =
  'The composer could not be loaded, so the line is as it was. Check that the page is still reachable and try again.';

const SILENT_COMPOSER =
  'The composer no longer answered, so it was ended and the line is as it was. Ask once more: it starts afresh. If that happens again, compose a shorter part of the chart.';

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
  const versions = first.lesson.versions === undefined ? null : await fetchVersions();
  const lessons = createLessonStore(
    first.lesson,
    (notice) => editor.setState({ notice }),
    (next, before) =>
      keeper.isOnlyShown() && !differInUseOnly(next, before)
        ? whyOnlyShown(editor.getState().reading)
        : (whyNotInMetre(next, before) ?? whyNotKept(next)),
    versions,
  );
  /** Fetches what reads versions where a lesson has any; false where it cannot be had. */
  const prepare = async (lesson: Lesson): Promise<boolean> => {
    if (lesson.versions === undefined) return true;
    try {
      lessons.knowVersions(await fetchVersions());
      return true;
    } catch {
      return false;
    }
  };
  const editor = createEditorStore(firstPiece(first.lesson));
  editor.setState({
    rescue: first.rescue,
    reading: first.newer && toldOf(first.newer.shown, first.newer.sentences, () => void makeCopy()),
  });
  /** What is noted on this device as open. */
  let noted = first.noted;
  /** The lesson as it came or was last written to a file: in this state it is not lost when it is put away. */
  let safe = first.lesson;

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
  });
  const isOfDevice = (base: Parameters<typeof keeper.seat>[1]): boolean =>
    base !== null && base !== AS_IT_CAME && base !== ONLY_SHOWN;
  if (isOfDevice(first.base)) past.opened();
  if (first.refused !== null) keeper.refused(first.refused);

  /** The piece or bar at hand may have gone with an undo or a removal; then the first piece or the last bar is at hand. */
  lessons.subscribe(({ lesson }) => {
    const { pieceId, bar } = editor.getState();
    const piece = lesson.pieces.find((each) => each.id === pieceId);
    if (piece === undefined) {
      editor.setState({ pieceId: firstPiece(lesson), bar: null, pencil: null });
    } else if (bar !== null && (piece.kind !== 'line' || bar >= piece.bars.length)) {
      const last = piece.kind === 'line' ? piece.bars.length - 1 : -1;
      editor.setState({ bar: last < 0 ? null : last });
    }
  });

  lessons.subscribe(({ lesson, redoLabel, document }, { lesson: before, document: documentBefore }) => {
    const { justParked } = editor.getState();
    const isSame = lesson.id === before.id && document.open === documentBefore.open;
    // What undoing parks was parked before.
    const parked = isSame && redoLabel === null ? newlyParked(lesson, before) : [];
    if (parked.length > 0 || justParked.length > 0) editor.setState({ justParked: parked });
  });

  /**
   * Puts the lesson at hand away and another one in its place.
   * @param from - for one on this device, its revision there; null for one that is to be saved as it stands
   * @param name - how it is noted as open
   * @returns whether it was opened: not while the lesson at hand would be lost
   */
  const open = async (
    lesson: Lesson,
    from: Parameters<typeof keeper.seat>[1] = null,
    name = lesson.id,
  ): Promise<boolean> => {
    if (!(await prepare(lesson))) {
      editor.setState({ notice: NO_VERSIONS });
      return false;
    }
    const kept = await keeper.flush();
    if (!kept.ok && lessons.getState().document !== safe) {
      editor.setState({ notice: NOT_OPENED });
      return false;
    }
    void past.flush();
    safe = lesson;
    guard.opening(name);
    keeper.seat(lesson, from);
    lessons.open(lesson);
    editor.setState({
      pieceId: firstPiece(lesson),
      bar: null,
      pencil: null,
      remarks: [],
      notice: null,
      reading: null,
      asking: null,
    });
    if (from === null) await keeper.flush();
    else await note(name);
    if (isOfDevice(from)) {
      past.opened();
      void storage.noteUsed(lesson.id, Date.now());
    }
    return true;
  };

  /**
   * Composes beside the page. A lesson that is changed meanwhile is composed anew as it is then; when another lesson
   * was opened or `stop` called it off, nothing happens.
   */
  const composeAnew = async (deed: Deed, pieceId: string, stop: AbortSignal | null): Promise<void> => {
    const { lesson: asked, opening } = lessons.getState();
    const given = new AbortController();
    const giveUp = () => given.abort();
    stop?.addEventListener('abort', giveUp);
    const unfollow = lessons.subscribe(giveUp);
    const answer = await composer.compose(deed, asked, pieceId, given.signal);
    unfollow();
    stop?.removeEventListener('abort', giveUp);
    const { lesson, opening: openingNow } = lessons.getState();
    if (stop?.aborted === true || openingNow !== opening) return;
    // A change that was undone meanwhile called it off all the same.
    if (lesson !== asked || (!answer.ok && answer.problem === 'called off')) {
      await composeAnew(deed, pieceId, stop);
      return;
    }
    if (!answer.ok) {
      editor.setState({ notice: answer.problem === 'silent' ? SILENT_COMPOSER : NO_COMPOSER });
      return;
    }
    const { lesson: composed, remarks } = answer.value;
    lessons.change(() => shareParts(asked, composed), { label: deed });
    if (editor.getState().pieceId === pieceId) editor.setState({ remarks });
  };

  /** From now on the lesson that was only shown is one of this device, and can be changed. */
  const makeCopy = async (): Promise<void> => {
    keeper.seat(lessons.getState().document, null);
    editor.setState({ notice: null, reading: null });
    await keeper.flush();
  };

  /**
   * Opens what this copy can show of a lesson of a newer one. It has an id of its own, so that the newer lesson is
   * never written over; it is kept once a copy is made of it.
   * @param name - the id of the newer lesson where it is on this device, to be opened again at the next start
   */
  const openNewer = async (
    shown: NewerLesson,
    sentences: readonly string[],
    name: string | null = null,
  ): Promise<boolean> => {
    const lesson = { ...shown.lesson, id: freshLessonId() };
    const opened = await open(lesson, ONLY_SHOWN, name ?? lesson.id);
    if (opened) editor.setState({ reading: toldOf(shown, sentences, () => void makeCopy()) });
    return opened;
  };

  const offerAsFile = (id: string, why: string): void =>
    editor.setState({ rescue: { id, sentence: `${why} ${AS_IT_IS}` } });

  /** Opens a lesson saved on this device; one that cannot be read stays as it is and is offered as a file. */
  async function openSaved(id: string): Promise<void> {
    const loaded = await storage.load(id);
    if (!loaded.ok) editor.setState({ notice: loaded.problem });
    else if (loaded.value.kind === 'none') editor.setState({ notice: GONE });
    else if (loaded.value.kind === 'unreadable') offerAsFile(id, loaded.value.sentence);
    else if (loaded.value.kind === 'newer') await openNewer(loaded.value.shown, loaded.value.sentences, id);
    else await open(loaded.value.lesson, loaded.value.revision);
  }

  /** Brings an earlier state back, as a step that can be taken back; what stands now is kept as a state before. */
  const bringBack = async ({ lesson: earlier }: Earlier): Promise<void> => {
    const loaded = await storage.load(earlier.id);
    if (!loaded.ok) editor.setState({ notice: loaded.problem });
    else if (loaded.value.kind !== 'lesson') await open(earlier);
    else if (await open(loaded.value.lesson, loaded.value.revision)) {
      void storage.keepState(loaded.value.lesson, Date.now(), BRINGING_BACK);
      lessons.change(() => earlier, { label: BRINGING_BACK });
    }
  };

  let composing = 0;
  const compose = async (deed: Deed, stop: AbortSignal | null = null): Promise<void> => {
    const { pieceId } = editor.getState();
    composing += 1;
    editor.setState({ composing: pieceId });
    await composeAnew(deed, pieceId, stop);
    composing -= 1;
    if (composing === 0) editor.setState({ composing: null });
  };

  return {
    lessons,
    editor,
    storage,
    composer,
    composeLine: () => compose('compose line'),
    anotherTake: () => compose('another take'),
    /** Composes several takes to compare, unless `stop` calls it off; the line stays. */
    severalTakes: (stop: AbortSignal) => compose('compose several takes', stop),
    choosePiece: (pieceId: string) => editor.setState({ pieceId, bar: null, pencil: null, remarks: [] }),
    /** Opens the ideas of a written bar (index from 0); null closes them. */
    /** The pencil goes along to another bar of its piece, and is put away with the bar. */
    chooseBar: (pieceId: string, bar: number | null) => {
      const { pencil } = editor.getState();
      const goes = pencil !== null && bar !== null && pencil.pieceId === pieceId;
      const there = goes && pencil.bar !== bar ? { ...pencil, bar, tick: 0, next: null, from: null } : pencil;
      editor.setState({ pieceId, bar, pencil: goes ? there : null });
    },
    /**
     * Does something to the versions of the lesson, once what reads them is here.
     * @param change - the step that it is; null for none, as where another version is opened
     */
    async changeVersions(
      command: (versions: Versions, document: Lesson) => Lesson,
      change: Change | null,
    ): Promise<void> {
      try {
        const room = await fetchVersions();
        lessons.knowVersions(room);
        lessons.changeDocument((document) => command(room, document), change);
      } catch {
        editor.setState({ notice: NO_VERSIONS });
      }
    },
    dismissNotice: () => editor.setState({ notice: null }),
    /** The teacher has taken note of what was read from a file. */
    dismissReading: () => editor.setState({ reading: null }),
    startNewLesson: () => open(newLesson(freshLessonId(), 'New lesson')),
    startSample: (index: number) => open(sampleLesson(index, freshLessonId()), AS_IT_CAME, sampleMark(index)),
    openSaved,
    /** Shows an earlier state of a lesson of this device; nothing of it is kept unless it is brought back. */
    async lookAt(earlier: Earlier): Promise<void> {
      const { id } = earlier.lesson;
      const shown = { ...earlier.lesson, id: freshLessonId() };
      if (!(await open(shown, ONLY_SHOWN, id))) return;
      editor.setState({
        reading: earlierStateOf(earlier, {
          leave: () => void openSaved(id),
          bringBack: () => void bringBack(earlier),
          makeCopy: () => void makeCopy(),
        }),
      });
    },
    /** Offers a lesson on this device as a file, because it cannot be opened; `why` is a sentence. */
    offerAsFile,
    /** The teacher has taken note of a lesson that was not opened. */
    dismissRescue: () => editor.setState({ rescue: null }),
    /** Opens what was read of a lesson file as a lesson of its own; the lesson at hand stays on this device. */
    async openRead(parsed: Result<Lesson, LessonProblem>): Promise<void> {
      if (parsed.ok) {
        await open({ ...parsed.value, id: freshLessonId() });
      } else {
        const { problem } = parsed;
        if (problem.kind === 'newer' && problem.shown !== null)
          await openNewer(problem.shown, describeNewer(problem.shown, problem.version));
        else editor.setState({ notice: describeLessonProblem(problem) });
      }
    },
    /** A name for a new lesson on this device. */
    freshId: freshLessonId,
    /** Takes a lesson other than the one at hand off this device; a failure is a sentence. */
    removeSaved: storage.remove,
    /** Notes that a lesson is in a file as it stands, so that it can be put away even where it cannot be saved. */
    keptAsFile: (lesson: Lesson) => {
      safe = lesson;
    },
    /**
     * Opens a lesson that came from elsewhere, by a link or from another program's file, as a lesson of its own on this device; false when it could
     * not be opened.
     */
    openNewer,
    openCopy: (lesson: Lesson): Promise<boolean> => open({ ...lesson, id: freshLessonId() }),
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

/** What is said of a lesson that came with more than this copy knows. */
const toldOf = (
  { leftOut, whole }: NewerLesson,
  sentences: readonly string[],
  makeCopy: () => void,
): FileReading => ({
  sentences,
  only: { isReduced: leftOut.length > 0, whole, makeCopy },
});

const parkedIn = (lesson: Lesson): readonly string[] =>
  lesson.pieces.flatMap((piece) => (piece.kind === 'line' ? piece.parked.map(({ id }) => id) : []));

/** Ids of the bars that were in their lines before a change and are parked after it. */
function newlyParked(lesson: Lesson, before: Lesson): readonly string[] {
  const known = new Set(parkedIn(before));
  return parkedIn(lesson).filter((id) => !known.has(id));
}

export type Session = Awaited<ReturnType<typeof startSession>>;
