import { MOST_TIMES } from './limits';
import type { Navigation } from './navigation';
import type { ProblemList } from './problems';
import type { ChartBar, ChartPlace } from './types';

/** A sign of the way through the chart, and where it stands in the text. */
export interface WrittenSign {
  readonly sign: Navigation;
  readonly place: ChartPlace;
}

/** A bar while the chart is read; endings and repeats are settled when the whole chart is there. */
export interface Draft
  extends Omit<ChartBar, 'repeatEnd' | 'repeatStart' | 'ending' | 'navigation' | 'pushed' | 'tail'> {
  repeatStart: boolean;
  repeatEnd: number | null;
  /** Until settled, only on the bar that carries the number. */
  ending: readonly number[] | null;
  /** A double bar line stands after the bar. */
  doubled: boolean;
  /** Its first chord is pushed into the bar before. */
  readonly early: boolean;
  /** Signs of the way, with their places. */
  signs: readonly WrittenSign[];
  /** The bar belongs to a section written by its name alone. */
  readonly again: boolean;
}

/**
 * Spreads ending numbers over the bars they hold for, and gives each repeat end inside endings the number of
 * times its passage is played. An ending closed by `:|` holds up to it; the last one up to a double bar line,
 * the next repeat or section, or for as long as the ending before it.
 */
export function settleEndings(
  bars: readonly Draft[],
  sectionStarts: ReadonlySet<number>,
  problems: ProblemList,
): void {
  let passage: Draft[] = [];
  let lengthBefore = 1;
  let index = 0;
  const finish = () => {
    settlePassage(passage, problems);
    passage = [];
    lengthBefore = 1;
  };
  while (index < bars.length) {
    const first = bars[index];
    if (!first) break;
    if (first.ending === null || first.repeatStart) finish();
    if (first.ending === null) {
      index += 1;
      continue;
    }
    const length = endingLength(bars, index, sectionStarts, lengthBefore);
    for (const bar of bars.slice(index, index + length)) {
      bar.ending = first.ending;
      passage.push(bar);
    }
    lengthBefore = length;
    index += length;
  }
  finish();
}

function settlePassage(passage: readonly Draft[], problems: ProblemList): void {
  const [first] = passage;
  if (!first) return;
  const times = Math.min(MOST_TIMES, Math.max(...passage.map((bar) => Math.max(...(bar.ending ?? [1])))));
  const ends = passage.filter((bar) => bar.repeatEnd !== null);
  const asked = Math.max(...ends.map((bar) => bar.repeatEnd ?? 2));
  if (asked > 2 && asked > times && !first.again) {
    problems.push({
      ...first.place,
      message: `The repeat is to be played ${asked} times, but its endings are numbered up to ${times} only: write the others, or several numbers before one, as in 1.-${asked - 1}.`,
    });
  }
  for (const bar of ends) bar.repeatEnd = Math.max(bar.repeatEnd ?? 2, times);
  if (ends.length === 0 && !first.again) {
    problems.push({
      ...first.place,
      message: 'This ending does not lead back: write :| after the bars of the first ending.',
    });
  }
}

/** Bars that an ending starting at `start` holds for. */
function endingLength(
  bars: readonly Draft[],
  start: number,
  sectionStarts: ReadonlySet<number>,
  lengthBefore: number,
): number {
  let length = 1;
  const last = () => bars[start + length - 1];
  const goesOn = () => {
    const next = bars[start + length];
    return (
      next !== undefined &&
      last()?.repeatEnd === null &&
      last()?.doubled === false &&
      next.ending === null &&
      !next.repeatStart &&
      !sectionStarts.has(start + length)
    );
  };
  while (goesOn()) length += 1;
  const closed = last()?.repeatEnd !== null || last()?.doubled === true;
  const followed = bars[start + length]?.ending != null;
  return closed || followed ? length : Math.min(length, lengthBefore);
}

/** Whether two bars belong to the same ending, or both to none, as what lies outside the chart does. */
export const sameEnding = (one: ChartBar | undefined, other: ChartBar | undefined): boolean =>
  (one?.ending ?? []).join() === (other?.ending ?? []).join();

/** How often a repeat that ends with a bar is played, where it is not twice and no numbers of endings say it. */
export const timesToSay = ({ repeatEnd, ending }: ChartBar): number | null =>
  repeatEnd === null || repeatEnd === 2 || ending !== null ? null : repeatEnd;
