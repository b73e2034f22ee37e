import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** Something that takes longer than a moment, and how to call it off. */
export interface Work {
  readonly what: string;
  readonly cancel: () => void;
}

const inHand = createStore<{ readonly work: Work | null }>(() => ({ work: null }));

/** Shows that something is being done until it is done or called off; it replaces what was being done before. */
export async function runWork(what: string, work: (signal: AbortSignal) => Promise<void>): Promise<void> {
  inHand.getState().work?.cancel();
  const controller = new AbortController();
  const mine: Work = { what, cancel: () => controller.abort() };
  inHand.setState({ work: mine });
  try {
    await work(controller.signal);
  } finally {
    if (inHand.getState().work === mine) inHand.setState({ work: null });
  }
}

export const useWork = (): Work | null => useStore(inHand, ({ work }) => work);
