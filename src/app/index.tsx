import { createRoot } from 'react-dom/client';
import { App, createPlayback, openLinkedLesson, StartFailed } from './pages';
import { startSession } from './state';
import { openStorage } from './storage';

/** Starts the app in an element of the page. */
export async function startApp(element: HTMLElement): Promise<void> {
  const root = createRoot(element);
  try {
    const session = await startSession(openStorage());
    await openLinkedLesson(session);
    window.addEventListener('hashchange', () => void openLinkedLesson(session));
    root.render(<App session={session} playback={createPlayback(session)} />);
  } catch (problem) {
    root.render(<StartFailed />);
    reportError(problem);
  }
}
