import { metreName, sameMetre } from '../base';
import type { Chart, ChartProblem } from '../chart';
import { feelById, whyNotPlayedIn } from '../feel';
import type { Lesson, LinePiece } from './types';

/**
 * Why an edit that gives a piece another metre is not made: its feel has no rhythms there. In one sentence, which names
 * the feels that have; null where it can be made.
 */
export function whyNotInMetre(next: Lesson, before: Lesson): string | null {
  for (const piece of next.pieces) {
    const known = before.pieces.find(({ id }) => id === piece.id);
    if (piece.kind !== 'line' || known?.kind !== 'line' || sameMetre(known.metre, piece.metre)) continue;
    const why = whyNotPlayedIn(feelById(piece.feel), piece.metre, false);
    if (why !== null) return `${why} Choose another feel first. The lesson is as it was.`;
  }
  return null;
}

/** Bars in a metre in which the feel has no rhythms, told once for each such metre, where the first of them stands. */
export function metreProblems({ feel }: LinePiece, chart: Chart): readonly ChartProblem[] {
  const told = new Set<string>();
  return chart.bars.flatMap(({ metre, pickup, place }): readonly ChartProblem[] => {
    const name = metreName(metre);
    const why = pickup || told.has(name) ? null : whyNotPlayedIn(feelById(feel), metre, true);
    if (why === null) return [];
    told.add(name);
    return [{ ...place, message: `${why} The kick and the hi-hat mark the beats of such bars here.` }];
  });
}
