import { barTicks } from '../../base';
import type { Remarks } from '../reading/remarks';
import type { WrittenBar } from './read-bars';
import type { StruckNote } from './struck';

/** A note with its pitch, not yet with its length. */
interface Pitched extends StruckNote {
  readonly tick: number;
  readonly fret: number;
  readonly midi: number;
}

/** A note, or a part of it within one bar, in ticks of its bar. */
export interface Sounded extends Omit<Pitched, 'tick' | 'midi'> {
  readonly start: number;
  readonly end: number;
  readonly key: number;
  readonly tiedOn: boolean;
  /** It goes on from the bar before. */
  readonly continued: boolean;
}

/** Of notes on one column the lowest. */
function lowestOnly(notes: readonly Pitched[], bar: number, remarks: Remarks): readonly Pitched[] {
  const kept: Pitched[] = [];
  for (const note of [...notes].sort((one, other) => one.tick - other.tick || one.midi - other.midi)) {
    if (kept.at(-1)?.tick === note.tick) {
      remarks.inBar('Of notes that are struck together only the lowest is kept', bar);
    } else kept.push(note);
  }
  return kept;
}

/**
 * How long notes sound: to the next one or to the silence that is counted; where silences are told and none comes,
 * over the bar line into the next bar, else to the end of the bar.
 */
export function soundedIn(
  bars: readonly WrittenBar[],
  heights: readonly (readonly Pitched[])[],
  silencesAreTold: boolean,
  remarks: Remarks,
): readonly (readonly Sounded[])[] {
  const result: Sounded[][] = bars.map(() => []);
  const sources = sourcesOf(bars);
  bars.forEach((bar, index) => {
    const struck = lowestOnly(heights[index] ?? [], index, remarks);
    const own = result[index] ?? [];
    const ends = [...struck.map(({ tick }) => tick), ...bar.silences, barTicks(bar.metre)];
    const endOf = (start: number): number => Math.min(...ends.filter((end) => end > start));
    const before = result[sources[index] ?? -1];
    const from = before?.at(-1);
    const begins = struck[0]?.tick === 0 || bar.silences.includes(0);
    if (silencesAreTold && !begins && from !== undefined) {
      own.push({ ...from, start: 0, end: endOf(0), tiedOn: false, continued: true });
      before?.splice(-1, 1, { ...from, tiedOn: true });
    }
    for (const { tick, midi, ...note } of struck) {
      own.push({ ...note, start: tick, end: endOf(tick), key: midi, tiedOn: false, continued: false });
    }
  });
  return result;
}

/** The bar from which a note goes on into each: the one before it, for all endings the one before the first. */
function sourcesOf(bars: readonly WrittenBar[]): readonly number[] {
  let beforeEndings = -1;
  return bars.map(({ ending }, index) => {
    const previous = bars[index - 1]?.ending ?? null;
    if (ending === null || ending.join() === previous?.join()) return index - 1;
    if (previous === null) beforeEndings = index - 1;
    return beforeEndings;
  });
}
