import {
  type Composition,
  anotherTake as composeAnotherTake,
  composePiece,
  describeLessonProblem,
  type Lesson,
  newLesson,
  parseLesson,
  sampleLesson,
} from '../../core/lesson';
import type { LessonStorage } from '../storage';
import { startAutosave } from './autosave';
import { createEditorStore } from './editor-store';
import { createLessonStore } from './lesson-store';

const firstPiece = (lesson: Lesson): string => lesson.pieces[0]?.id ?? '';

/** A name for a new lesson on this device that no other lesson has. */
const freshLessonId = (): string => `lesson-${crypto.randomUUID()}`;

/**
 * One teacher at work: the document, where in it they are, and its place on this device. Everything the page
 * does to the document goes through here.
 */
export async function startSession(storage: LessonStorage) {
  const { lesson: initial, notice } = await firstLesson(storage);
  const lessons = createLessonStore(initial);
  const editor = createEditorStore(firstPiece(initial));
  editor.setState({ notice });
  const autosave = startAutosave(lessons, editor, storage);
  await autosave.flush();
  await storage.rememberOpened(initial.id);

  /** The piece at hand may have gone with an undo or a removal; then the first one is at hand. */
  lessons.subscribe(({ lesson }) => {
    const { pieceId, bar } = editor.getState();
    const piece = lesson.pieces.find((each) => each.id === pieceId);
    if (piece === undefined) {
      editor.setState({ pieceId: firstPiece(lesson), bar: null });
    } else if (bar !== null && (piece.kind !== 'line' || bar >= piece.bars.length)) {
      editor.setState({ bar: null });
    }
  });

  const open = async (lesson: Lesson): Promise<void> => {
    await autosave.flush();
    lessons.open(lesson);
    editor.setState({ pieceId: firstPiece(lesson), bar: null, remarks: [], notice: null });
    await autosave.flush();
    await storage.rememberOpened(lesson.id);
  };

  const compose = (label: string, work: (lesson: Lesson, pieceId: string) => Composition): void => {
    const { pieceId } = editor.getState();
    const composition = work(lessons.getState().lesson, pieceId);
    lessons.change(() => composition.lesson, { label });
    editor.setState({ remarks: composition.remarks });
  };

  return {
    lessons,
    editor,
    storage,
    composeLine: () => compose('compose line', composePiece),
    anotherTake: () => compose('another take', composeAnotherTake),
    choosePiece: (pieceId: string) => editor.setState({ pieceId, bar: null, remarks: [] }),
    /** Opens the ideas of a written bar (index from 0); null closes them. */
    chooseBar: (pieceId: string, bar: number | null) => editor.setState({ pieceId, bar }),
    dismissNotice: () => editor.setState({ notice: null }),
    startNewLesson: () => open(newLesson(freshLessonId(), 'New lesson')),
    startSample: (index: number) => open(sampleLesson(index, freshLessonId())),
    /** Opens a lesson saved on this device; a lesson that cannot be read stays as it is and is named. */
    async openSaved(id: string): Promise<void> {
      const loaded = await storage.load(id);
      if (loaded.ok) {
        await open(loaded.value);
      } else {
        editor.setState({ notice: loaded.problem });
      }
    },
    /** Opens a lesson file's text as a lesson of its own; the lesson at hand stays on this device. */
    async openFile(text: string): Promise<void> {
      const parsed = parseLesson(text);
      if (parsed.ok) {
        await open({ ...parsed.value, id: freshLessonId() });
      } else {
        editor.setState({ notice: describeLessonProblem(parsed.problem) });
      }
    },
    /** Opens a lesson that came from elsewhere, by a link, as a lesson of its own on this device. */
    openCopy: (lesson: Lesson): Promise<void> => open({ ...lesson, id: freshLessonId() }),
    saveNow: autosave.flush,
    end: autosave.stop,
  };
}

export type Session = Awaited<ReturnType<typeof startSession>>;

/** The lesson that was open last, or a sample on the first visit; a lesson that cannot be read is left alone. */
async function firstLesson(storage: LessonStorage): Promise<{ lesson: Lesson; notice: string | null }> {
  const id = await storage.lastOpened();
  if (id === null) {
    return { lesson: sampleLesson(0, freshLessonId()), notice: null };
  }
  const loaded = await storage.load(id);
  return loaded.ok
    ? { lesson: loaded.value, notice: null }
    : {
        lesson: sampleLesson(0, freshLessonId()),
        notice: `${loaded.problem} The lesson you had open was left as it is; a sample is shown instead.`,
      };
}
