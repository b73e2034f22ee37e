import { useCallback, useEffect, useLayoutEffect } from 'react';
import type { Session } from '../state';
import { AtWorkProvider } from './at-work';
import { useDroppedFile, whenIdle } from './common';
import type { Playback } from './playing';
import { ProblemBoundary } from './problem';
import { saveLessonFile } from './saving';
import { openChosen, usePracticeView, WritingPage } from './writing';

interface AppProps {
  readonly session: Session;
  readonly playback: Playback;
}

/** Where what tells of full fields cannot be fetched, the browser cuts off what does not fit. */
const tellFullFields = (): void =>
  void import('./full-fields').then(
    ({ watchFullFields }) => watchFullFields(),
    () => {},
  );

/** The whole page for one teacher at work. */
export function App({ session, playback }: AppProps) {
  const practice = usePracticeView();
  const open = useCallback((file: File) => openChosen(session, file), [session]);
  const refuse = useCallback((notice: string) => session.editor.setState({ notice }), [session]);
  useDroppedFile(practice === null ? open : null, refuse);
  useEffect(() => whenIdle(tellFullFields, 2000), []);
  const { prepareSaving } = session;
  // As soon as the chart is there, and before the sheet: what is typed is to be saved within the second.
  useLayoutEffect(prepareSaving, [prepareSaving]);
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
