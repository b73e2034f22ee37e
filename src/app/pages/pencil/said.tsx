import { useEffect } from 'react';
import { describeAtHand, fitPencil } from '../../../core/writing';
import { useAtWork, useEditor } from '../at-work';
import { useMidiInput } from './midi-input';

/** What the pencil last did or where it stands; before its first step, where one writes. */
export function useSaid(): string {
  return useEditor(({ said }) => (said === '' ? 'Write with the keys below, on staff, tab or neck.' : said));
}

/**
 * What the pencil does, for ears. The strip goes with the pencil to another system and is made anew there, and of a live
 * region that was just made nothing is announced: so this one stands where nothing moves it, for as long as one writes.
 */
export function PencilSaid() {
  const { session } = useAtWork();
  const said = useSaid();
  useMidiInput(session);
  useEffect(
    () =>
      session.lessons.subscribe((state, before) => {
        const { pencil: at, pencilled } = session.editor.getState();
        const there = at && fitPencil(state.lesson, at);
        // What was said of a step is no longer so when it is taken back.
        if (there !== null && state.lesson !== before.lesson && state.lesson !== pencilled)
          session.editor.setState({ said: describeAtHand(state.lesson, there) });
      }),
    [session],
  );
  return (
    <p className="visually-hidden" role="status" id="pencil-said" aria-label="Pencil">
      {said}
    </p>
  );
}
