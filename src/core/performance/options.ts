import type { Bpm } from '../base';
import type { DrumWay } from '../feel';
import type { BassPlan, ClickPlan } from '../lesson';

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
  /** Played bars of the round that are left out at its beginning; none, unless said otherwise. */
  readonly from?: number;
  /** Every round, unless said otherwise. */
  readonly bass?: BassPlan;
  /** Every beat, unless said otherwise. */
  readonly click?: ClickPlan;
  /** Whether a pickup leads in; it does, unless said otherwise. */
  readonly pickup?: boolean;
  /** The round is played again and again; a pickup leads into the first one only. */
  readonly goesRound?: boolean;
  /** An empty bar after every round, where only the click goes on. */
  readonly emptyBar?: boolean;
  /** A bar without the bass before the first one, once. */
  readonly intro?: boolean;
  /** A last hit in a bar of its own, after the last bar. */
  readonly ending?: boolean;
  /** The drummer plays hardly a bar like the last, the same for the same seed; without a seed every bar as written. */
  readonly drumSeed?: number;
  /** The pattern of the drums where the feel offers several; its own, unless said otherwise. */
  readonly drumWay?: DrumWay;
  /** Small deviations in time and strength, the same for the same seed; without a seed none. */
  readonly humaniseSeed?: number;
}
