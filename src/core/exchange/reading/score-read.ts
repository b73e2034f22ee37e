import type { FoundScore } from './found';

/** A part that can be read instead. */
export interface PartChoice {
  readonly id: string;
  readonly name: string;
}

export interface ScoreRead {
  readonly found: FoundScore;
  /** Every part that could be read, in the order of the score. */
  readonly parts: readonly PartChoice[];
  readonly part: string;
}
