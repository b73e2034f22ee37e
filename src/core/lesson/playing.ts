import type { Bpm } from '../base';
import type { DrumWay } from '../feel';

/** When the bass plays; where it rests, the student plays. */
export type BassPlan =
  | { readonly kind: 'every round' }
  /** The round is played twice, first with the bass, then without. */
  | { readonly kind: 'every second round' }
  /** Every so many bars are played twice, first with the bass, then without. */
  | { readonly kind: 'call and response'; readonly bars: number };

/**
 * Which beats the click marks. `two and four` is every beat but the strong ones: 2 and 4 of four, 2 and 3 of three,
 * 2 of two. `off-beats` is the & of every beat, swung as the feel is (the last eighth of a compound beat).
 */
export const CLICK_BEATS = ['every beat', 'two and four', 'off-beats'] as const;

export interface ClickPlan {
  readonly beats: (typeof CLICK_BEATS)[number];
  /** The click sounds for some bars and drops out for others, by turns; null: it never drops out. */
  readonly dropOut: { readonly sounding: number; readonly silent: number } | null;
}

/** A rung of a tempo ladder: so many rounds at a tempo before the next one. */
export interface Rung {
  readonly tempo: Bpm;
  readonly rounds: number;
}

/** A ladder from slow to full tempo; its rungs are kept while it is not climbed. */
export interface TempoLadder {
  readonly climbed: boolean;
  /** In the order of playing; never empty. */
  readonly rungs: readonly Rung[];
}

/** How far the numbers of the playing sentence go; the validator holds a lesson to the same. */
export const PLAYING_LIMITS = {
  /** Beats a minute at which anything is practised. */
  tempo: { least: 20, most: 300 },
  /** Per cent of the piece's tempo. */
  share: { least: 20, most: 200 },
  /** Per cent of a part's place in the mix. */
  volume: { least: 5, most: 100 },
  rungs: 12,
  rounds: 99,
  /** Bars of call and response, and of a click that drops out. */
  turn: 16,
} as const;

/** Which parts of the rhythm section play, and how the teacher last practised with them. */
export interface PlayingSettings {
  readonly bass: boolean;
  readonly drums: boolean;
  readonly chops: boolean;
  readonly organ: boolean;
  readonly click: boolean;
  /** How loud a part is, in per cent of its place in the mix; 100 when left out. */
  readonly volumes?: Readonly<Partial<Record<'bass' | 'drums' | 'chops' | 'organ' | 'click', number>>>;
  /** Bars of count-in; 0 is none. */
  readonly countIn: 0 | 1 | 2;
  readonly loop: boolean;
  /** First and last bar to play, by their written numbers (a pickup is 0); null plays the whole piece. */
  readonly passage: { readonly first: number; readonly last: number } | null;
  /** Share of the piece's tempo in per cent; a fraction where a whole number of beats a minute asks for it. */
  readonly tempoShare: number;
  /** Every round when left out. */
  readonly bassPlan?: BassPlan;
  /** Every beat, never dropping out, when left out. */
  readonly clickPlan?: ClickPlan;
  /** An empty bar after every round; none when left out. */
  readonly emptyBar?: boolean;
  /** A bar of the rhythm section before the first one; none when left out. */
  readonly intro?: boolean;
  /** A last hit where nothing goes round; there when left out. */
  readonly ending?: boolean;
  /** The pattern of the drums where the feel offers several; the feel's own when left out, and in other feels. */
  readonly drumWay?: DrumWay;
  /** Small deviations in time and strength, and every round anew, as people play; there when left out. */
  readonly humanised?: boolean;
  /** Not climbed when left out. */
  readonly ladder?: TempoLadder;
}
