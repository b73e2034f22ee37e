import type { Bpm } from '../base';
import type { LinePiece, LineSheet } from '../lesson';
import { EVERY_BEAT, EVERY_ROUND, passageOf, practiceTempo } from '../playing';
import { buildPerformance } from './build';
import type { Performance } from './types';

/**
 * A performance and how often its round is played. The count-in of a step sounds once, before its first
 * round. A tempo ladder is a list of steps, the same bars at rising tempos.
 */
export interface PlayStep {
  readonly performance: Performance;
  /** A whole number from 1, or until stopped; steps after an endless one are never reached. */
  readonly rounds: number | 'endless';
}

interface Round {
  readonly tempo?: Bpm;
  readonly countIn?: 0;
  readonly emptyBar?: boolean;
  readonly pickup?: false;
  readonly goesRound?: true;
}

function roundOf(piece: LinePiece, sheet: LineSheet, round: Round, as: 'sound' | 'notes'): Performance {
  const seed = seedOf(piece);
  const { countIn, bassPlan = EVERY_ROUND, clickPlan = EVERY_BEAT } = piece.playing;
  return buildPerformance(sheet, {
    tempo: round.tempo ?? practiceTempo(piece),
    countIn: round.countIn ?? countIn,
    passage: passageOf(piece, sheet),
    bass: bassPlan,
    click: clickPlan,
    emptyBar: round.emptyBar ?? false,
    pickup: round.pickup ?? true,
    goesRound: as === 'sound' && round.goesRound === true,
    ...(seed === null ? {} : { drumSeed: seed }),
    ...(seed === null || as === 'notes' ? {} : { humaniseSeed: seed }),
  });
}

const seedOf = ({ seed, playing }: LinePiece): number | null => (playing.humanised === false ? null : seed);

/**
 * What the sentence says, once through, for a file.
 * @param as - `sound` deviates from the grid as people do where the sentence says so; `notes` stay on it, because
 * the program that reads them counts ticks
 */
export const performanceOf = (piece: LinePiece, sheet: LineSheet, as: 'sound' | 'notes'): Performance =>
  roundOf(piece, sheet, {}, as);

/** Everything the player is to play, as the sentence says; the last rung of a ladder goes round where a loop is on. */
export function stepsOf(piece: LinePiece, sheet: LineSheet): readonly PlayStep[] {
  const { loop, ladder, emptyBar = false } = piece.playing;
  if (ladder?.climbed !== true) {
    const performance = roundOf(piece, sheet, { emptyBar: emptyBar && loop, goesRound: true }, 'sound');
    return [{ performance, rounds: loop ? 'endless' : 1 }];
  }
  return ladder.rungs.map(({ tempo, rounds }, index) => ({
    performance: roundOf(
      piece,
      sheet,
      { tempo, emptyBar, goesRound: true, ...(index > 0 ? { countIn: 0, pickup: false } : {}) },
      'sound',
    ),
    rounds: loop && index === ladder.rungs.length - 1 ? 'endless' : rounds,
  }));
}
