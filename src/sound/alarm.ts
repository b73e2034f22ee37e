import type { Audio } from './audio';

/** Something that is called when a sample is played; there is never more than one thing to wait for. */
export interface Alarm {
  /** @param sample - of the device's time; called at once where it has been */
  callAt(sample: number, callback: () => void): void;
  waitForNothing(): void;
}

/**
 * Goes by the device's time. Tone's transport would not do: it has looked a tenth of a second ahead already, and what is
 * scheduled before that never comes.
 */
export function createAlarm({ context }: Audio): Alarm {
  let waiting: number | null = null;
  const waitForNothing = (): void => {
    if (waiting !== null) context.clearTimeout(waiting);
    waiting = null;
  };
  return {
    waitForNothing,
    callAt: (sample, callback) => {
      waitForNothing();
      waiting = context.setTimeout(
        () => {
          waiting = null;
          callback();
        },
        Math.max(0, sample / context.sampleRate - context.currentTime),
      );
    },
  };
}
