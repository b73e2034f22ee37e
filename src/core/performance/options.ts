import type { Bpm } from '../base';

/** When the bass of the performance plays; where it rests, the student plays. */
export type BassPlan =
  | { readonly kind: 'every round' }
  /** The round is played twice, first with the bass, then without. */
  | { readonly kind: 'every second round' }
  /** Every so many bars are played twice, first with the bass, then without. */
  | { readonly kind: 'call and response'; readonly bars: number };

export interface ClickPlan {
  /**
   * `two and four` is every beat but the strong ones: 2 and 4 of four, 2 and 3 of three, 2 of two.
   * `off-beats` is the & of every beat, swung as the feel is (the last eighth of a compound beat).
   */
  readonly beats: 'every beat' | 'two and four' | 'off-beats';
  /** The click sounds for some bars and drops out for others, by turns; null: it never drops out. */
  readonly dropOut: { readonly sounding: number; readonly silent: number } | null;
}

/** What a performance of a line depends on besides the sheet. */
export interface PerformanceOptions {
  /** The tempo in force: the piece's own, times the practice share. */
  readonly tempo: Bpm;
  /** Bars of clicks before the first bar. */
  readonly countIn: 0 | 1 | 2;
  /**
   * First and last bar by their written numbers (a pickup is 0); null is the whole piece. Bars the chart lacks are
   * left out.
   */
  readonly passage: { readonly first: number; readonly last: number } | null;
  /** Every round, unless said otherwise. */
  readonly bass?: BassPlan;
  /** Every beat, unless said otherwise. */
  readonly click?: ClickPlan;
  /** An empty bar after every round, where only the click goes on. */
  readonly emptyBar?: boolean;
  /** Small deviations in time and strength, the same for the same seed; without a seed none. */
  readonly humaniseSeed?: number;
}
