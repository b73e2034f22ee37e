import type { Clock } from '../clock';

/** Quiet time after a change before it is saved, in milliseconds: long enough to gather a word being typed. */
const PAUSE = 300;

/** Longest time that a change waits while others follow it, in milliseconds: with the saving itself below a second. */
const LONGEST = 600;

/** When to save: a moment after a change, and never late because more of them follow. */
export interface SaveTimer {
  /** Something changed. */
  changed(): void;
  /** Everything that changed is being saved now. */
  begun(): void;
}

export function createSaveTimer(clock: Clock, save: () => void): SaveTimer {
  let stop: (() => void) | null = null;
  /** When the first of the changes that wait was made. */
  let since: number | null = null;

  const begun = (): void => {
    stop?.();
    stop = null;
    since = null;
  };

  return {
    begun,
    changed: () => {
      since ??= clock.now();
      stop?.();
      const waited = clock.now() - since;
      stop = clock.after(Math.max(0, Math.min(PAUSE, LONGEST - waited)), save);
    },
  };
}
