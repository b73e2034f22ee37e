/** How loud it is, in decibels below full level. */
export interface HeardLevel {
  readonly now: number;
  /** The quietest of the last seconds. */
  readonly quiet: number;
  /** The input is at its limit. */
  readonly clipped: boolean;
}
