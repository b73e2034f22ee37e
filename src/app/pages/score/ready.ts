import { useSyncExternalStore } from 'react';

type Score = typeof import('../../../score');

/** The engraver arrives after the first paint; until then the sheet keeps its place free. */
export type ScoreState =
  | { readonly kind: 'loading' }
  | { readonly kind: 'ready'; readonly score: Score }
  | { readonly kind: 'failed' };

let state: ScoreState = { kind: 'loading' };
let asked = false;
const listeners = new Set<() => void>();

function settle(next: ScoreState): void {
  state = next;
  for (const listener of listeners) listener();
}

function load(): void {
  asked = true;
  import('../../../score')
    .then(async (score) => {
      await score.loadScoreFonts();
      settle({ kind: 'ready', score });
    })
    .catch(() => {
      asked = false;
      settle({ kind: 'failed' });
    });
}

/** Starts fetching the engraver, or tries again after a failure. */
export function loadScore(): void {
  if (asked) return;
  settle({ kind: 'loading' });
  load();
}

export const useScore = (): ScoreState =>
  useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => state,
  );
