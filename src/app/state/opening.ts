import type { Result } from '../../core/base';
import {
  type Lesson,
  type LessonProblem,
  type NewerLesson,
  newLesson,
  sampleLesson,
} from '../../core/lesson';
import type { LessonStorage, StartGuard } from '../storage';
import { firstPiece } from './at-hand';
import { fetchChecking, NO_CHECKING } from './checking-later';
import { type Earlier, earlierStateOf } from './earlier';
import type { EditorStore } from './editor-store';
import { sampleMark } from './first-lesson';
import { freshLessonId } from './fresh-id';
import { AS_IT_CAME, type Base, isOfDevice, type Keeper, ONLY_SHOWN } from './keeper';
import type { LessonStore } from './lesson-store';
import { toldOf } from './only-shown';
import type { PastKeeper } from './past-keeper';
import { NO_VERSIONS } from './versions-later';

const NOT_OPENED =
  'The lesson at hand could not be saved on this device, so nothing was opened. Save it as a file first (Export, Lesson file).';

const GONE = 'This lesson is no longer on this device.';

const AS_IT_IS =
  'It stays on this device as it is; save it as a file, or remove it (Lessons, The whole shelf).';

const BRINGING_BACK = 'bring back an earlier state';

interface OpeningParts {
  readonly lessons: LessonStore;
  readonly editor: EditorStore;
  readonly storage: LessonStorage;
  readonly keeper: Keeper;
  readonly past: PastKeeper;
  readonly guard: StartGuard;
  /** Notes a lesson on this device as the one that is open. */
  readonly note: (name: string) => Promise<void>;
  /** A lesson of this device is at hand. */
  readonly opened: () => void;
  /** Fetches what is needed to read a lesson; false where that cannot be had. */
  readonly prepare: (lesson: Lesson) => Promise<boolean>;
}

/** The ways to another lesson: new ones, samples, lessons and earlier states of this device, and what comes from elsewhere. */
export function startOpening(parts: OpeningParts) {
  const { lessons, editor, storage, keeper, past, guard, note, opened, prepare } = parts;
  /** The lesson as it came or was last written to a file: in this state it is not lost when it is put away. */
  let safe = lessons.getState().document;

  /**
   * Puts the lesson at hand away and another one in its place.
   * @param from - for one on this device, its revision there; null for one that is to be saved as it stands
   * @param name - how it is noted as open
   * @param before - called when nothing is in the way any more, before the lesson is on the page: what stands over the
   * page goes then, so that nobody meets the new lesson while it cannot be typed into
   * @returns whether it was opened: not while the lesson at hand would be lost
   */
  const open = async (
    lesson: Lesson,
    from: Base = null,
    name = lesson.id,
    before: () => void = () => {},
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
    before();
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
    if (isOfDevice(from)) opened();
    return true;
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
      lessons.changeDocument(() => earlier, { label: BRINGING_BACK });
    }
  };

  return {
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
    /** Opens what was read of a lesson file as a lesson of its own; the lesson at hand stays on this device. */
    async openRead(parsed: Result<Lesson, LessonProblem>): Promise<void> {
      if (parsed.ok) {
        await open({ ...parsed.value, id: freshLessonId() });
      } else {
        const { problem } = parsed;
        const checking = await fetchChecking();
        if (checking === null) editor.setState({ notice: NO_CHECKING });
        else if (problem.kind === 'newer' && problem.shown !== null)
          await openNewer(problem.shown, checking.describeNewer(problem.shown, problem.version));
        else editor.setState({ notice: checking.describeLessonProblem(problem) });
      }
    },
    openNewer,
    /**
     * Opens a lesson that came from elsewhere, by a link or from another program's file, as a lesson of its own on
     * this device; false when it could not be opened.
     * @param before - called before it is on the page, when nothing is in the way any more
     */
    openCopy: (lesson: Lesson, before?: () => void): Promise<boolean> => {
      const copy = { ...lesson, id: freshLessonId() };
      return open(copy, null, copy.id, before);
    },
    makeCopy,
    /** Offers a lesson on this device as a file, because it cannot be opened; `why` is a sentence. */
    offerAsFile,
    /** Notes that a lesson is in a file as it stands, so that it can be put away even where it cannot be saved. */
    keptAsFile: (lesson: Lesson) => {
      safe = lesson;
    },
  };
}
