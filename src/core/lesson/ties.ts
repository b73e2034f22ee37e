import { barTicks, rememberedFor, samePitch } from '../base';
import { neighboursOf } from '../chart';
import type { LineSheet, SheetBar, SheetNote } from './sheet-types';

/** How the line hangs together over a bar's two bar lines. */
export interface BarTies {
  /** The first note goes on from the bar to the left, which is played just before. */
  readonly left: boolean;
  /** It goes on from another bar that is played just before: a repeat's end, the bar before an earlier ending. */
  readonly elsewhere: boolean;
  /** Some way leads into the bar on which its first note is not held but struck, like the first time through a repeat. */
  readonly struck: boolean;
  /** Something leads to the bar's first note from the left, or into it as a later ending: no repeat brings it round. */
  readonly from: boolean;
  /**
   * Where the last note goes on: in the next bar as written, or only `elsewhere` (back at the beginning of a
   * repeat, in another ending).
   */
  readonly to: 'none' | 'next' | 'elsewhere';
}

/** No tie leads in or out. */
export const UNTIED: BarTies = { left: false, elsewhere: false, struck: true, from: false, to: 'none' };

/** Whether a bar's first note only goes on from the bar to the left, so that nothing is said of it again. */
export const isHeldOver = ({ left, struck }: BarTies): boolean => left && !struck;

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
 * The ties over the bar lines, one entry a written bar. What is written at the beginning of a repeat is struck the first
 * time through, when there is nothing to be tied from, and held when it comes round.
 */
export const tiesOverBarLines: (sheet: LineSheet) => readonly BarTies[] = rememberedFor(({ chart, bars }) => {
  const { before, after } = neighboursOf(chart);
  const tied = (from: number | null, to: number | null): boolean =>
    from !== null && to !== null && takesUp(bars[to], bars[from]);
  return bars.map(({ written }, index): BarTies => {
    const ways = before[index] ?? [];
    const held = ways.filter((way) => tied(way, index));
    const left = held.includes(index - 1);
    const next = after[index]?.includes(index + 1) === true && tied(index, index + 1);
    const elsewhere = (after[index] ?? []).some((bar) => tied(index, bar));
    return {
      left,
      elsewhere: held.some((way) => way !== index - 1),
      struck: held.length < ways.length || held.length === 0,
      from: left || (written.ending !== null && held.some((way) => (way ?? index) < index)),
      to: next ? 'next' : elsewhere ? 'elsewhere' : 'none',
    };
  });
});
