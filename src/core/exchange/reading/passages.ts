import { MOST_TIMES } from '../../chart';
import type { FoundBar } from './found';
import type { Remarks } from './remarks';

/** Repeats as a chart has them. */
export interface Passage {
  repeatStart: boolean;
  repeatEnd: number | null;
  ending: readonly number[] | null;
}

/**
 * The repeats of a file as a chart writes them. In a file, a repeat without a beginning goes back behind the last
 * repeat, or to the first bar; in a chart it may not go over the beginning of a section, so its sign is set.
 */
export function passagesOf(bars: readonly FoundBar[], remarks: Remarks): readonly Passage[] {
  const passages = bars.map(
    ({ repeatStart, repeatEnd, ending }): Passage => ({ repeatStart, repeatEnd, ending }),
  );
  reachRepeats(passages, remarks);
  openWhereNeeded(bars, passages, remarks);
  settleEndings(passages, remarks);
  return passages;
}

/** An ending whose bracket stops before its repeat sign goes on up to it. */
function reachRepeats(passages: readonly Passage[], remarks: Remarks): void {
  for (const [index, { ending, repeatEnd }] of passages.entries()) {
    if (ending === null || repeatEnd !== null || passages[index + 1]?.ending !== null) continue;
    const rest = passages.slice(index + 1);
    const end = rest.findIndex((bar) => bar.repeatEnd !== null || bar.ending !== null || bar.repeatStart);
    const closed = rest[end]?.repeatEnd !== null && rest[end]?.ending === null && !rest[end]?.repeatStart;
    if (end < 0 || !closed || rest[end + 1]?.ending == null) continue;
    for (const bar of rest.slice(0, end + 1)) bar.ending = ending;
    remarks.inBar('An ending whose bracket stops early goes on up to its repeat sign', index);
  }
}

function openWhereNeeded(bars: readonly FoundBar[], passages: readonly Passage[], remarks: Remarks): void {
  /** The bar of an open sign, until its passage is over. */
  let sign: number | null = null;
  let closed = false;
  let start = 0;
  const dropUnclosed = (): void => {
    const bar = sign === null || closed ? undefined : passages[sign];
    if (bar === undefined || sign === null) return;
    bar.repeatStart = false;
    remarks.inBar('A repeat that never ends is left out', sign);
  };
  for (const [index, passage] of passages.entries()) {
    const before = passages[index - 1];
    if (before && (before.ending === null ? before.repeatEnd !== null : passage.ending === null && closed)) {
      start = index;
      sign = null;
      closed = false;
    }
    if (passage.repeatStart) {
      dropUnclosed();
      sign = index;
      start = index;
      closed = false;
    }
    if (passage.repeatEnd === null) continue;
    closed = true;
    const first = passages[start];
    const within = bars.slice(start + 1, index + 1);
    const named = start > 0 || within.some(({ section }) => section !== null);
    if (sign === null && first && named) {
      first.repeatStart = true;
      sign = start;
    }
  }
  dropUnclosed();
}

/** Each run of bars in endings is one passage, unless a repeat begins within it. */
function settleEndings(passages: readonly Passage[], remarks: Remarks): void {
  for (let from = 0; from < passages.length; ) {
    let until = from + 1;
    if (passages[from]?.ending !== null) {
      while (passages[until]?.ending && passages[until]?.repeatStart === false) until += 1;
      settleRun(passages.slice(from, until), from, remarks);
    }
    from = until;
  }
}

function settleRun(run: readonly Passage[], first: number, remarks: Remarks): void {
  const ends = run.filter(({ repeatEnd }) => repeatEnd !== null);
  if (ends.length === 0) {
    for (const bar of run) bar.ending = null;
    remarks.inBar('An ending without a repeat is written as plain bars', first);
    return;
  }
  const times = Math.min(MOST_TIMES, Math.max(2, ...run.flatMap(({ ending }) => ending ?? [])));
  fillGaps(run, times, first, remarks);
  for (const bar of ends) bar.repeatEnd = Math.max(times, bar.repeatEnd ?? 2);
}

/** Times through for which no ending is named belong to the ending before: 1 and 3 are 1, 2 and 3. */
function fillGaps(run: readonly Passage[], times: number, first: number, remarks: Remarks): void {
  const named = new Set(run.flatMap(({ ending }) => ending ?? []));
  const [lowest = []] = run.map(({ ending }) => ending ?? []);
  let before = lowest;
  for (let time = 1; time <= times; time += 1) {
    const own = run.find(({ ending }) => ending?.includes(time))?.ending;
    if (own) before = own;
    if (named.has(time)) continue;
    const [last, grown] = [before.join(), [...before, time].sort((one, other) => one - other)];
    for (const bar of run) if (bar.ending?.join() === last) bar.ending = grown;
    before = grown;
    remarks.inBar('A time through for which no ending is named is played with the ending before', first);
  }
}

/** How often a passage is played, within what a chart can say. */
export const timesPlayed = (times: number): number => Math.min(MOST_TIMES, Math.max(2, Math.round(times)));
