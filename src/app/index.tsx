import { createRoot } from 'react-dom/client';
import { createComposer } from './composer';
import { App, createPlayback, loadOffline, loadPractice, openLinkedLesson, StartFailed } from './pages';
import { type Session, startSession } from './state';
import { openStartGuard, openStorage } from './storage';

/** Time after the start before files are fetched for later, in milliseconds: the first look comes first. */
const OFFLINE_PAUSE = 2000;

/** The development server's files change under its feet: only a built app is kept. */
function keepOfflineLater(session: Session | null): void {
  if (!import.meta.env.PROD) return;
  // Where it cannot be fetched, nothing is kept, and all works while there is a network.
  window.setTimeout(
    () =>
      void loadOffline().then(
        ({ keepOffline }) => keepOffline(session),
        () => {},
      ),
    OFFLINE_PAUSE,
  );
}

/** Whether the address asks for the practice page, which never sees the lessons of this device. */
const isForPractice = (): boolean => new URLSearchParams(window.location.search).has('practice');

/** Starts the app in an element of the page. */
export async function startApp(element: HTMLElement): Promise<void> {
  const root = createRoot(element);
  const guard = openStartGuard();
  try {
    if (isForPractice()) {
      const { StudentPage } = await loadPractice();
      root.render(<StudentPage embedded={null} />);
      keepOfflineLater(null);
      return;
    }
    const session = await startSession(openStorage(), createComposer(), { guard });
    await openLinkedLesson(session);
    window.addEventListener('hashchange', () => void openLinkedLesson(session));
    root.render(<App session={session} playback={createPlayback(session)} />);
    keepOfflineLater(session);
  } catch (problem) {
    guard.failed();
    root.render(<StartFailed />);
    reportError(problem);
  }
}
