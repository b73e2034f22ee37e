import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

type Score = typeof import('../../../score');

/** The engraver arrives after the first paint; until then the sheet keeps its place free. */
export type ScoreState =
  | { readonly kind: 'loading' }
  | { readonly kind: 'ready'; readonly score: Score }
  | { readonly kind: 'failed' };

const engraver = createStore<{ readonly state: ScoreState }>(() => ({ state: { kind: 'loading' } }));
let asked = false;

const settle = (state: ScoreState): void => engraver.setState({ state });

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

export const useScore = (): ScoreState => useStore(engraver, ({ state }) => state);
