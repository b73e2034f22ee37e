import { type Result, success } from '../../core/base';
import type { Lesson } from '../../core/lesson';
import type { LessonStorage } from '../storage';
import type { EditorStore, SavingState } from './editor-store';
import type { LessonStore } from './lesson-store';

/** Long enough to gather a word being typed, short enough that closing the tab loses nothing worth naming. */
const PAUSE_MS = 400;

/** Calls back whenever the page is hidden or left, until the returned function is called. */
export type WatchLeaving = (onLeave: () => void) => () => void;

export const watchPage: WatchLeaving = (onLeave) => {
  const onHide = () => {
    if (document.visibilityState === 'hidden') onLeave();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onLeave);
  return () => {
    document.removeEventListener('visibilitychange', onHide);
    window.removeEventListener('pagehide', onLeave);
  };
};

/**
 * Saves the lesson a moment after each change and at once when the page is hidden or left.
 * @returns `flush` saves what is unsaved now, its failure a sentence; `countAsSaved` says that a lesson needs no
 * saving as it stands; `stop` ends the watch.
 */
export function startAutosave(
  lessons: LessonStore,
  editor: EditorStore,
  save: LessonStorage['save'],
  watchLeaving: WatchLeaving,
) {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let saved: Lesson | null = null;
  const say = (saving: SavingState) => editor.setState({ saving });
  const letTimerGo = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };

  const flush = async (): Promise<Result<null, string>> => {
    letTimerGo();
    // What is changed while it is being saved is saved too.
    for (let { lesson } = lessons.getState(); lesson !== saved; { lesson } = lessons.getState()) {
      const result = await save(lesson, Date.now());
      if (!result.ok) {
        say({ kind: 'failed', sentence: result.problem });
        return result;
      }
      saved = lesson;
    }
    say({ kind: 'saved' });
    return success(null);
  };

  const unsubscribe = lessons.subscribe((state, before) => {
    if (state.lesson === before.lesson) return;
    letTimerGo();
    if (state.lesson === saved) {
      say({ kind: 'saved' });
      return;
    }
    say({ kind: 'unsaved' });
    timer = setTimeout(() => void flush(), PAUSE_MS);
  });
  const unwatch = watchLeaving(() => void flush());

  return {
    flush,
    countAsSaved: (lesson: Lesson) => {
      saved = lesson;
    },
    stop() {
      unsubscribe();
      unwatch();
      letTimerGo();
    },
  };
}
