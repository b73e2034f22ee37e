import { useEffect, useState } from 'react';
import { useAtWork } from '../at-work';

/** Fields say for themselves what is typed into them. */
const IS_TYPED = 'input, textarea, select';

/** Says to a screen reader what was done to the lesson, taken back or brought back; the pencil says it for itself. */
export function Happenings() {
  const { session } = useAtWork();
  const [said, setSaid] = useState('');
  useEffect(
    () =>
      session.lessons.subscribe((state, before) => {
        if (state.lesson.id !== before.lesson.id) setSaid('');
        else if (state.lesson === before.lesson) return;
        else if (before.undoLabel !== null && state.redoLabel === before.undoLabel)
          setSaid(`Taken back: ${state.redoLabel}.`);
        else if (before.redoLabel !== null && state.undoLabel === before.redoLabel)
          setSaid(`Brought back: ${state.undoLabel}.`);
        else if (
          session.editor.getState().pencilled !== state.lesson &&
          !document.activeElement?.matches(IS_TYPED)
        )
          setSaid(`Done: ${state.undoLabel ?? ''}.`);
      }),
    [session],
  );
  return (
    <p role="status" aria-label="Done" className="visually-hidden">
      {said}
    </p>
  );
}
