import type { FoundScore } from './found';

/** Something that can be chosen in a file: a part, a voice of it, or where the chords come from. */
export interface FileChoice {
  readonly id: string;
  readonly name: string;
}

/** What can be chosen, in the order of the file, and the id of what was read. */
export interface Chosen {
  readonly all: readonly FileChoice[];
  /** Null where there is nothing to choose. */
  readonly read: string | null;
}

export interface ScoreRead {
  readonly found: FoundScore;
  /** At least one part. */
  readonly parts: Chosen;
  /** Voices of the part that was read; at least one. */
  readonly voices: Chosen;
  /** Symbols or the triads of a part. */
  readonly chords: Chosen;
  /** Where a file was played and not written: the grid it is written on, and where its beats come from. */
  readonly grids?: Chosen;
  readonly pulses?: Chosen;
}
