import type { Session } from '../state';
import { saveLessonFile } from './lesson-files';
import type { Playback } from './playing';
import { usePracticeView } from './practice-view';
import { ProblemBoundary } from './problem';
import { AtWorkProvider } from './session';
import { WritingPage } from './writing-page';

interface AppProps {
  readonly session: Session;
  readonly playback: Playback;
}

/** The whole page for one teacher at work. */
export function App({ session, playback }: AppProps) {
  const practice = usePracticeView();
  return (
    <ProblemBoundary onSave={() => saveLessonFile(session.lessons.getState().lesson)}>
      <AtWorkProvider value={{ session, playback }}>{practice ?? <WritingPage />}</AtWorkProvider>
    </ProblemBoundary>
  );
}
