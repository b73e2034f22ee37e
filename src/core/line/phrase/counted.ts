import type { HeardLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import type { Tone } from '../tones';

/** What the features of a line are counted in: its sounding bars with their notes. */
export interface Counted {
  readonly model: LineModel;
  readonly heard: HeardLine;
  /** Bars in which something sounds. */
  readonly bars: readonly BarModel[];
  /** The notes of these bars, bar by bar, and in one list. */
  readonly lists: readonly (readonly Tone[])[];
  readonly flat: readonly Tone[];
  /** How many of these bars there are. */
  readonly count: number;
  /** The feel asks for no silence: the bass walks. */
  readonly walk: boolean;
}

/** Gathers what is counted in. */
export function countedIn(model: LineModel, heard: HeardLine): Counted {
  const bars = model.bars.filter((bar) => (heard[bar.index]?.length ?? 0) > 0);
  const lists = bars.map((bar) => heard[bar.index] ?? []);
  const walk = model.request.feel.silence.least === 0;
  return { model, heard, bars, lists, flat: lists.flat(), count: bars.length, walk };
}

/** A part of a whole, 0 of nothing. */
export const share = (part: number, whole: number): number => (whole === 0 ? 0 : part / whole);

export const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

/** How often the commonest of some texts stands among them. */
export const mostOf = (texts: readonly string[]): number => {
  const counts = new Map<string, number>();
  let most = 0;
  for (const text of texts) {
    const count = (counts.get(text) ?? 0) + 1;
    counts.set(text, count);
    most = Math.max(most, count);
  }
  return most;
};
