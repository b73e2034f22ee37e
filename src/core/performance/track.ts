import type { Bpm } from '../base';
import type { LinePiece, LineSheet, PlayingSettings } from '../lesson';
import { roundOf } from './steps';
import type { Performance } from './types';

/** What a sound file to play along with holds of a line. */
export interface TrackWishes {
  readonly tempo: Bpm;
  /** A whole number from 1. */
  readonly rounds: number;
  readonly countIn: PlayingSettings['countIn'];
  readonly passage: PlayingSettings['passage'];
  /**
   * The file is for a player that repeats it: no count-in, no pickup and no last hit, so that its end leads into its
   * beginning.
   */
  readonly repeats: boolean;
}

/** The rounds of a track in their order, each played anew as the sentence says; only the first one is counted in. */
export function trackRounds(
  piece: LinePiece,
  sheet: LineSheet,
  { tempo, rounds, countIn, passage, repeats }: TrackWishes,
): readonly Performance[] {
  const playing = { ...piece.playing, countIn, passage, loop: repeats };
  return Array.from({ length: rounds }, (_, before) => {
    const begins = before === 0 && !repeats;
    const ends = before === rounds - 1 && !repeats;
    const round = { tempo, before, begins, parted: !ends, ends, goesRound: true } as const;
    return roundOf({ ...piece, playing }, sheet, round, 'sound');
  });
}
