import type { Lesson } from '../../core/lesson';
import type { LessonStorage } from '../storage';
import type { EditorStore, SavingState } from './editor-store';
import type { LessonStore } from './lesson-store';

/** Long enough to gather a word being typed, short enough that closing the tab loses nothing worth naming. */
const PAUSE_MS = 400;

/**
 * Saves the lesson a moment after each change and at once when the page is hidden or left.
 * @returns `flush` saves what is unsaved now; `stop` ends the watch.
 */
export function startAutosave(lessons: LessonStore, editor: EditorStore, storage: LessonStorage) {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let saved: Lesson | null = null;
  const say = (saving: SavingState) => editor.setState({ saving });

  const flush = async (): Promise<void> => {
    if (timer !== null) {
      clearTimeout(timer);
      timer = null;
    }
    const { lesson } = lessons.getState();
    if (lesson === saved) {
      return;
    }
    const result = await storage.save(lesson, Date.now());
    if (!result.ok) {
      say({ kind: 'failed', sentence: result.problem });
      return;
    }
    saved = lesson;
    if (lessons.getState().lesson === lesson) {
      say({ kind: 'saved' });
    }
  };

  const unsubscribe = lessons.subscribe((state, before) => {
    if (state.lesson === before.lesson || state.lesson === saved) {
      return;
    }
    say({ kind: 'unsaved' });
    if (timer !== null) {
      clearTimeout(timer);
    }
    timer = setTimeout(() => void flush(), PAUSE_MS);
  });
  const onHide = () => {
    if (document.visibilityState === 'hidden') {
      void flush();
    }
  };
  const onLeave = () => void flush();
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onLeave);

  return {
    flush,
    stop() {
      unsubscribe();
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', onLeave);
      if (timer !== null) {
        clearTimeout(timer);
      }
    },
  };
}
