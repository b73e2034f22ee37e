import { useSyncExternalStore } from 'react';

/** Something that takes longer than a moment, and how to call it off. */
export interface Work {
  readonly what: string;
  readonly cancel: () => void;
}

let current: Work | null = null;
const listeners = new Set<() => void>();

function set(next: Work | null): void {
  current = next;
  for (const listener of listeners) listener();
}

/** Shows that something is being done until it is done or called off; it replaces what was being done before. */
export async function runWork(what: string, work: (signal: AbortSignal) => Promise<void>): Promise<void> {
  current?.cancel();
  const controller = new AbortController();
  const mine: Work = { what, cancel: () => controller.abort() };
  set(mine);
  try {
    await work(controller.signal);
  } finally {
    if (current === mine) set(null);
  }
}

export const useWork = (): Work | null =>
  useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => current,
  );
