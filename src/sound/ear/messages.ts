import type { Deafness, HeardNote } from '../../core/listening';

/** How loud it is, in decibels below full level. */
export interface HeardLevel {
  readonly now: number;
  /** The quietest of the last seconds. */
  readonly quiet: number;
  /** The input is at its limit. */
  readonly clipped: boolean;
}

/** What the audio thread tells; times of notes are seconds from the beginning of the stream. */
export interface EarReport {
  /** Notes that have ended since the last report. */
  readonly heard: readonly HeardNote[];
  readonly level: HeardLevel;
  /** All since the beginning. */
  readonly deafness: readonly Deafness[];
  /** How far what is left of the loudspeaker is below what is heard, in decibels; 0 where nothing of it is known. */
  readonly below: number;
  /** The device's time at the beginning of the stream, and now. */
  readonly begin: number;
  readonly now: number;
}
