import { barName } from '../base';
import { describeKeyIn, sameKey } from '../theory';
import type { ChartReading } from './sheet-types';

/** More changes than this make a list that nobody reads; the score shows them all. */
const MOST_TOLD = 4;

/** Where another key begins, or the first comes back, in the note names of the lesson: `E major from bar 5`. */
export function keyChanges({ chart, key, noteNames = 'letters' }: ChartReading): readonly string[] {
  let now = key;
  const changes: string[] = [];
  for (const bar of chart.bars) {
    const next = bar.key ?? key;
    if (!sameKey(next, now)) changes.push(`${describeKeyIn(noteNames, next)} from ${barName(bar.number)}`);
    now = next;
  }
  return changes.slice(0, MOST_TOLD);
}
