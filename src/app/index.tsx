import { createRoot } from 'react-dom/client';
import { createComposer } from './composer';
import { isInForeignFrame } from './frames';
import {
  App,
  createPlayback,
  loadForeignFrame,
  loadOffline,
  openLinkedLesson,
  practiceAddress,
  StartFailed,
} from './pages';
import { type Session, startSession } from './state';
import { openStartGuard, openStorage } from './storage';

/** Time after the start before files are fetched for later, in milliseconds: the first look comes first. */
const OFFLINE_PAUSE = 2000;

/** The development server's files change under its feet: only a built app is kept. */
function keepOfflineLater(session: Session): void {
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

/** Links to the practice page from before it had an address of its own. */
const isForPractice = (): boolean => new URLSearchParams(window.location.search).has('practice');

/** Starts the app in an element of the page. */
export async function startApp(element: HTMLElement): Promise<void> {
  if (isForPractice()) {
    window.location.replace(practiceAddress(window.location.href));
    return;
  }
  const root = createRoot(element);
  if (isInForeignFrame()) {
    const { ForeignFrame } = await loadForeignFrame();
    root.render(<ForeignFrame />);
    return;
  }
  const guard = openStartGuard();
  try {
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
