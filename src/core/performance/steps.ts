import { type Bpm, hashText } from '../base';
import type { LinePiece, LineSheet } from '../lesson';
import { EVERY_BEAT, EVERY_ROUND, passageOf, practiceTempo } from '../playing';
import { buildPerformance } from './build';
import type { Performance } from './types';

/**
 * A performance and how often its round is played. The count-in of a step sounds once, before its first
 * round. A tempo ladder is a list of steps, the same bars at rising tempos.
 */
export interface PlayStep {
  /** Its first round. */
  readonly performance: Performance;
  /** A whole number from 1, or until stopped; steps after an endless one are never reached. */
  readonly rounds: number | 'endless';
  /** What is played in a later round, counted from 1; left out where every round is like the first. */
  readonly again?: (round: number) => Performance;
}

interface Round {
  readonly tempo?: Bpm;
  /** Rounds played before it. */
  readonly before?: number;
  /** Whether it is the first one of all, which is counted in. */
  readonly begins: boolean;
  /** Whether others follow, which an empty bar may part. */
  readonly parted: boolean;
  /** Whether nothing comes after it. */
  readonly ends: boolean;
  /** Whether it is played again and again from where its first whole bar begins. */
  readonly goesRound?: true;
}

function roundOf(piece: LinePiece, sheet: LineSheet, round: Round, as: 'sound' | 'notes'): Performance {
  const seed = seedOf(piece, round.before ?? 0);
  const { countIn, bassPlan = EVERY_ROUND, clickPlan = EVERY_BEAT, emptyBar = false } = piece.playing;
  const { intro = false, ending = true } = piece.playing;
  return buildPerformance(sheet, {
    tempo: round.tempo ?? practiceTempo(piece),
    countIn: round.begins ? countIn : 0,
    intro: round.begins && intro,
    ending: round.ends && ending,
    passage: passageOf(piece, sheet),
    bass: bassPlan,
    click: clickPlan,
    emptyBar: emptyBar && round.parted,
    pickup: round.begins,
    goesRound: as === 'sound' && round.goesRound === true,
    ...(seed === null ? {} : { drumSeed: seed }),
    ...(seed === null || as === 'notes' ? {} : { humaniseSeed: seed }),
  });
}

/** What varies from round to round; null where nothing does. */
const seedOf = ({ seed, playing }: LinePiece, round: number): number | null => {
  if (playing.humanised === false) return null;
  return round === 0 ? seed : hashText(`${seed} round ${round}`);
};

/**
 * What the sentence says, once through, for a file: the first round. It ends as the playing does, where that does not
 * go round.
 * @param as - `sound` deviates from the grid as people do where the sentence says so; `notes` stay on it, because
 * the program that reads them counts ticks
 */
export const performanceOf = (piece: LinePiece, sheet: LineSheet, as: 'sound' | 'notes'): Performance =>
  roundOf(piece, sheet, { begins: true, parted: false, ends: !piece.playing.loop }, as);

/** Everything the player is to play, as the sentence says; the last rung of a ladder goes round where a loop is on. */
export function stepsOf(piece: LinePiece, sheet: LineSheet): readonly PlayStep[] {
  const { loop, ladder, humanised } = piece.playing;
  const rungs: readonly { readonly tempo?: Bpm; readonly rounds: number }[] =
    ladder?.climbed === true ? ladder.rungs : [{ rounds: 1 }];
  let before = 0;
  return rungs.map(({ tempo, rounds: wanted }, index): PlayStep => {
    const last = index === rungs.length - 1;
    const rounds = last && loop ? 'endless' : wanted;
    const earlier = before;
    before += wanted;
    const play = (round: number): Performance =>
      roundOf(
        piece,
        sheet,
        {
          ...(tempo === undefined ? {} : { tempo }),
          before: earlier + round,
          begins: index === 0 && round === 0,
          parted: !(last && round + 1 === rounds),
          ends: last && round + 1 === rounds,
          goesRound: true,
        },
        'sound',
      );
    const same = rounds === 1 || (humanised === false && (rounds === 'endless' || !last));
    return { performance: play(0), rounds, ...(same ? {} : { again: play }) };
  });
}
