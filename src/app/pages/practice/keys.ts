import { useEffect } from 'react';
import type { Playback } from '../playing';

export const SPACE_IN_WORDS =
  'Space plays, pauses and goes on wherever no text is typed; Enter presses a button.';

/**
 * Where Space is typed, or is the only key that does what the field is for. Buttons and switches are pressed with
 * Enter as well, so nothing is out of reach where Space plays.
 */
const TAKES_SPACE =
  'input:not([type="number"]), textarea, select, summary, [contenteditable], [role="menuitem"]';

/** Space plays, pauses and goes on wherever no text is typed. */
export function usePracticeKeys(playback: Playback): void {
  useEffect(() => {
    const plays = (event: KeyboardEvent) => {
      if (event.key !== ' ' || event.defaultPrevented) return false;
      if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return false;
      return !(event.target instanceof Element && event.target.closest(TAKES_SPACE) !== null);
    };
    const onKeyDown = (event: KeyboardEvent) => {
      if (!plays(event)) return;
      event.preventDefault();
      if (event.repeat) return;
      if (playback.getState().kind === 'stopped') void playback.goOn();
      else playback.pause();
    };
    // A button answers to Space when the key goes up.
    const onKeyUp = (event: KeyboardEvent) => {
      if (plays(event)) event.preventDefault();
    };
    window.addEventListener('keydown', onKeyDown);
    window.addEventListener('keyup', onKeyUp);
    return () => {
      window.removeEventListener('keydown', onKeyDown);
      window.removeEventListener('keyup', onKeyUp);
    };
  }, [playback]);
}
