import { barTicks, samePitch } from '../base';
import { playOrder } from '../chart';
import type { LineSheet, SheetBar, SheetNote } from '../lesson';

/** How the line hangs together over a bar's two bar lines. */
export interface BarTies {
  /** The first note goes on from a bar that is played just before. */
  readonly from: boolean;
  /**
   * Where the last note goes on: in the next bar as written, or only `elsewhere` (back at the beginning of a
   * repeat, in another ending).
   */
  readonly to: 'none' | 'next' | 'elsewhere';
}

const leadsOn = (bar: SheetBar): SheetNote | null => {
  const last = bar.notes.at(-1);
  const reachesEnd = last && last.note.start + last.note.duration >= barTicks(bar.written.metre);
  return reachesEnd && last.note.tiedOn === true ? last : null;
};

function takesUp(bar: SheetBar | undefined, from: SheetBar | undefined): boolean {
  const first = bar?.notes[0]?.note;
  const last = from && leadsOn(from)?.note;
  return first !== undefined && first.start === 0 && !!last && samePitch(first.pitch, last.pitch);
}

/**
 * The ties over the bar lines, one entry a written bar. A bar tied from another than the one to its left shows it
 * only as a later ending: at the beginning of a repeat the first time through has nothing to be tied from.
 */
export function tiesOverBarLines(sheet: LineSheet): readonly BarTies[] {
  const order = playOrder(sheet.chart);
  const after = sheet.bars.map(() => new Set<number>());
  order.forEach((bar, place) => {
    const next = order[place + 1];
    if (next !== undefined) after[bar]?.add(next);
  });
  const tied = (from: number, to: number): boolean =>
    after[from]?.has(to) === true && takesUp(sheet.bars[to], sheet.bars[from]);
  return sheet.bars.map((bar, index): BarTies => {
    const elsewhere = [...(after[index] ?? [])].some((next) => tied(index, next));
    const lead = bar.written.ending === null ? [] : sheet.bars.keys();
    const from = tied(index - 1, index) || [...lead].some((other) => other < index && tied(other, index));
    return { from, to: tied(index, index + 1) ? 'next' : elsewhere ? 'elsewhere' : 'none' };
  });
}
