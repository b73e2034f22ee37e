import type { Session } from '../state';
import { AtWorkProvider } from './at-work';
import type { Playback } from './playing';
import { ProblemBoundary } from './problem';
import { saveLessonFile } from './saving';
import { usePracticeView, WritingPage } from './writing';

interface AppProps {
  readonly session: Session;
  readonly playback: Playback;
}

/** The whole page for one teacher at work. */
export function App({ session, playback }: AppProps) {
  const practice = usePracticeView();
  return (
    <ProblemBoundary
      onSave={() => saveLessonFile(session.lessons.getState().document)}
      onFail={session.failed}
      isSaved={() => session.editor.getState().saving.kind !== 'failed'}
    >
      <AtWorkProvider value={{ session, playback }}>{practice ?? <WritingPage />}</AtWorkProvider>
    </ProblemBoundary>
  );
}
