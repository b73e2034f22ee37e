import { type Bpm, hashText } from '../base';
import type { LinePiece, LineSheet } from '../lesson';
import { EVERY_BEAT, EVERY_ROUND, passageOf, practiceTempo } from '../playing';
import { buildPerformance } from './build';
import type { Performance } from './types';

/** A place in what the sentence says: where playing can begin, and where it goes on after a pause. */
export interface PlayPlace {
  /** Index of the rung of the ladder; 0 where none is climbed. */
  readonly rung: number;
  /** Rounds of the rung that are over. */
  readonly round: number;
  /** Index among the bars that the whole round plays. */
  readonly playedBar: number;
}

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
  /** Where in all that is said it begins; at the beginning, when left out. */
  readonly begins?: PlayPlace;
}

/** What is played of a line once through. */
export interface Round {
  readonly tempo?: Bpm;
  /** Rounds played before it. */
  readonly before?: number;
  /** Whether it is the first one of all. */
  readonly begins: boolean;
  /** Whether it is counted in; as the first one is, when left out. */
  readonly counted?: boolean;
  /** Played bars that are left out at its beginning. */
  readonly from?: number;
  /** Whether others follow, which an empty bar may part. */
  readonly parted: boolean;
  /** Whether nothing comes after it. */
  readonly ends: boolean;
  /** Whether it is played again and again from where its first whole bar begins. */
  readonly goesRound?: true;
}

/** One round of a line as the sentence says, with what comes before it and after it. */
export function roundOf(
  piece: LinePiece,
  sheet: LineSheet,
  round: Round,
  as: 'sound' | 'notes',
): Performance {
  const seed = seedOf(piece, round.before ?? 0);
  const { countIn, bassPlan = EVERY_ROUND, clickPlan = EVERY_BEAT, emptyBar = false } = piece.playing;
  const { intro = false, ending = true, drumWay } = piece.playing;
  return buildPerformance(sheet, {
    tempo: round.tempo ?? practiceTempo(piece),
    countIn: (round.counted ?? round.begins) ? countIn : 0,
    intro: round.begins && intro && round.from === undefined,
    ending: round.ends && ending,
    passage: passageOf(piece, sheet),
    bass: bassPlan,
    click: clickPlan,
    emptyBar: emptyBar && round.parted,
    pickup: round.begins,
    goesRound: as === 'sound' && round.goesRound === true,
    ...(round.from === undefined ? {} : { from: round.from }),
    ...(drumWay === undefined ? {} : { drumWay }),
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

interface Stretch {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly tempo?: Bpm;
  readonly wanted: number;
  /** As the last one goes round where a loop is on. */
  readonly rounds: number | 'endless';
}

/** The rungs of the ladder, or all as one rung. */
function stretchesOf(piece: LinePiece, sheet: LineSheet): readonly Stretch[] {
  const { loop, ladder } = piece.playing;
  const rungs: readonly { readonly tempo?: Bpm; readonly rounds: number }[] =
    ladder?.climbed === true ? ladder.rungs : [{ rounds: 1 }];
  return rungs.map(({ rounds: wanted, ...rung }, index) => ({
    ...rung,
    piece,
    sheet,
    wanted,
    rounds: loop && index === rungs.length - 1 ? 'endless' : wanted,
  }));
}

const BEGINNING: PlayPlace = { rung: 0, round: 0, playedBar: 0 };

/**
 * Everything the player is to play, as the sentence says, from a place on; the last rung of a ladder goes round where a loop
 * is on. It is counted in wherever it begins; a round that is begun in its middle is whole when it comes again.
 */
export const stepsOf = (piece: LinePiece, sheet: LineSheet, place = BEGINNING): readonly PlayStep[] =>
  stepsAlong(stretchesOf(piece, sheet), place);

/** A line that others follow, as the stages of a build-up do. */
export interface LineInTurn {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/**
 * Several lines one after the other without a break, as the sentence of each says and a rung for each; the last one goes
 * round where a loop is on. Only the first is counted in.
 * @param rounds - how often each is played, a whole number from 1
 */
export const stepsInTurn = (
  lines: readonly LineInTurn[],
  rounds: number,
  place = BEGINNING,
): readonly PlayStep[] =>
  stepsAlong(
    lines.map(({ piece, sheet }, index) => ({
      piece,
      sheet,
      wanted: rounds,
      rounds: piece.playing.loop && index === lines.length - 1 ? 'endless' : rounds,
    })),
    place,
  );

function stepsAlong(stretches: readonly Stretch[], place: PlayPlace): readonly PlayStep[] {
  let before = 0;
  return stretches.flatMap(({ piece, sheet, tempo, wanted, rounds }, index): readonly PlayStep[] => {
    const last = index === stretches.length - 1;
    const earlier = before;
    before += wanted;
    const here = index === place.rung ? place : { ...BEGINNING, rung: index };
    const left = rounds === 'endless' ? rounds : rounds - here.round;
    if (index < place.rung || (left !== 'endless' && left < 1)) return [];
    const play = (played: number): Performance => {
      const round = here.round + played;
      const entered = index === place.rung && played === 0;
      const ends = last && round + 1 === rounds;
      return roundOf(
        piece,
        sheet,
        {
          ...(tempo === undefined ? {} : { tempo }),
          ...(entered && here.playedBar > 0 ? { from: here.playedBar } : {}),
          before: earlier + round,
          begins: index === 0 && round === 0,
          counted: entered,
          parted: !ends,
          ends,
          goesRound: true,
        },
        'sound',
      );
    };
    const steady = piece.playing.humanised === false && (rounds === 'endless' || !last);
    const same = left === 1 || (steady && here.playedBar === 0);
    return [{ performance: play(0), rounds: left, begins: here, ...(same ? {} : { again: play }) }];
  });
}

/** Whether a place is still there: a ladder may have been made shorter. */
const isWithin = (piece: LinePiece, sheet: LineSheet, { rung, round }: PlayPlace): boolean => {
  const rounds = stretchesOf(piece, sheet)[rung]?.rounds ?? 0;
  return rounds === 'endless' || round < rounds;
};

/**
 * The place of a written bar, on the rung and in the round of `near`: the played bar there where it is that written bar,
 * else the first time that it is played; the beginning of the round where it is not played.
 * @param bar index of the written bar
 */
export function placeOfBar(
  piece: LinePiece,
  sheet: LineSheet,
  bar: number,
  near: PlayPlace = BEGINNING,
): PlayPlace {
  const begun = isWithin(piece, sheet, near) ? near : BEGINNING;
  const [step] = stepsOf(piece, sheet, { ...begun, playedBar: 0 });
  const bars = step?.performance.bars ?? [];
  const isThere = bars[near.playedBar]?.bar === bar;
  const playedBar = isThere ? near.playedBar : bars.findIndex((each) => each.bar === bar);
  return { ...begun, playedBar: Math.max(0, playedBar) };
}
