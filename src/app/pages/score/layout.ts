import { startTransition, useEffect, useMemo, useState } from 'react';
import type { Sheet } from '../../../core/lesson';
import type { ScoreLayout, ScoreOptions } from '../../../score';
import type { ScoreState } from './ready';

/** A layout, and the sheet of which it was made. */
interface LaidOut {
  readonly layout: ScoreLayout;
  readonly sheet: Sheet;
}

/**
 * The layout of a sheet, null before there is one, and whether a newer one is in the making. A usual score is laid out
 * at once; of a long one the layout before stays until the new one is there, and the page answers meanwhile.
 * @param printed - whether the paper is being laid out, which waits for nothing
 */
export function useScoreLayout(
  state: ScoreState,
  sheet: Sheet,
  options: ScoreOptions,
  printed: boolean,
): { readonly laid: LaidOut | null; readonly inTheMaking: boolean } {
  const [made, setMade] = useState<LaidOut | null>(null);
  const { width } = options;
  const score = state.kind === 'ready' && width > 0 ? state.score : null;
  const isLong = score !== null && !printed && score.isLong(sheet);
  const atOnce = useMemo(
    () => (score === null || isLong ? null : { sheet, layout: score.layoutScore(sheet, options) }),
    [score, isLong, sheet, options],
  );
  useEffect(() => {
    if (score === null || !isLong) return;
    let gone = false;
    void score
      .inTurns(score.layoutInSteps(sheet, options), () => !gone)
      .then((layout) => {
        if (layout !== null && !gone) startTransition(() => setMade({ sheet, layout }));
      });
    return () => {
      gone = true;
    };
  }, [score, isLong, sheet, options]);
  return isLong ? { laid: made, inTheMaking: made?.sheet !== sheet } : { laid: atOnce, inTheMaking: false };
}
