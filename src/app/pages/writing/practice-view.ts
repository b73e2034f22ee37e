import type { ReactNode } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Lesson } from '../../../core/lesson';

interface View {
  readonly page: ReactNode;
  readonly end: () => void;
}

const shown = createStore<{ readonly view: View | null }>(() => ({ view: null }));

function set(view: View | null): void {
  shown.getState().view?.end();
  shown.setState({ view });
}

/**
 * Shows the practice page of a lesson, as its student will see it, in the place of the lesson's own page. The
 * browser's way back leads back as well.
 * @throws the browser's error when the practice page cannot be fetched
 */
export async function openPracticeView(lesson: Lesson): Promise<void> {
  const { practiceView } = await import('../practice');
  const next = await practiceView(lesson, () => window.history.back());
  window.history.pushState(null, '');
  window.addEventListener('popstate', close, { once: true });
  set(next);
  window.scrollTo({ top: 0, behavior: 'instant' });
}

function close(): void {
  set(null);
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>('.header [aria-haspopup="menu"].button--main')?.focus(),
  );
}

/** The practice page while it is shown, else null. */
export const usePracticeView = (): ReactNode => useStore(shown, ({ view }) => view?.page ?? null);
