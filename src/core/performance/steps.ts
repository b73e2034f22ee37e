import { type Bpm, bpm, fieldTable, sameFields } from '../base';
import {
  type BassPlan,
  type ClickPlan,
  type LinePiece,
  type LineSheet,
  PLAYING_LIMITS,
  type PlayingSettings,
  toldTempo,
  writtenTempo,
} from '../lesson';
import { buildPerformance } from './build';
import type { Performance } from './types';

export const EVERY_ROUND: BassPlan = { kind: 'every round' };
export const EVERY_BEAT: ClickPlan = { beats: 'every beat', dropOut: null };

/** The tempo in force while no ladder is climbed: whole in the count it is told in, except the piece's own. */
export function practiceTempo(piece: LinePiece): Bpm {
  const { tempoShare } = piece.playing;
  if (tempoShare === 100) return piece.tempo;
  const { least, most } = PLAYING_LIMITS.tempo;
  const told = Math.round(toldTempo(piece, (piece.tempo * tempoShare) / 100));
  return bpm(Math.min(most, Math.max(least, writtenTempo(piece, told))));
}

/** The written numbers of a sheet's first and last bar; a pickup is bar 0. */
export function boundsOf({ bars }: LineSheet): { readonly least: number; readonly most: number } {
  const least = bars[0]?.written.number ?? 1;
  return { least, most: bars.at(-1)?.written.number ?? least };
}

/** The passage to play by the bars' written numbers, held within the chart; null plays everything. */
export function passageOf(piece: LinePiece, sheet: LineSheet): { first: number; last: number } | null {
  const { passage } = piece.playing;
  if (passage === null) return null;
  const { least, most } = boundsOf(sheet);
  const first = Math.max(passage.first, least);
  const last = Math.min(passage.last, most);
  return first > last || (first === least && last === most) ? null : { first, last };
}

/**
 * A performance and how often its round is played. The count-in of a step sounds once, before its first
 * round. A tempo ladder is a list of steps, the same bars at rising tempos.
 */
export interface PlayStep {
  readonly performance: Performance;
  /** A whole number from 1, or until stopped; steps after an endless one are never reached. */
  readonly rounds: number | 'endless';
}

/** Which parts the teacher wants to hear. */
export const mixOf = ({ bass, drums, chops, organ, click }: PlayingSettings) => ({
  bass,
  drums,
  chops,
  organ,
  click,
});

interface Round {
  readonly tempo?: Bpm;
  readonly countIn?: 0;
  readonly emptyBar?: boolean;
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

/** Whether the playing sentence sends the student up the tempo ladder. */
export const climbs = ({ ladder }: PlayingSettings): boolean => ladder?.climbed === true;

/** Everything the player is to play, as the sentence says; the last rung of a ladder goes round where a loop is on. */
export function stepsOf(piece: LinePiece, sheet: LineSheet): readonly PlayStep[] {
  const { loop, ladder, emptyBar = false } = piece.playing;
  if (ladder?.climbed !== true) {
    const performance = roundOf(piece, sheet, { emptyBar: emptyBar && loop }, 'sound');
    return [{ performance, rounds: loop ? 'endless' : 1 }];
  }
  return ladder.rungs.map(({ tempo, rounds }, index) => ({
    performance: roundOf(piece, sheet, { tempo, emptyBar, ...(index > 0 ? { countIn: 0 } : {}) }, 'sound'),
    rounds: loop && index === ladder.rungs.length - 1 ? 'endless' : rounds,
  }));
}

/**
 * What of the settings is heard as notes and times: the parts are only turned up and down, and the tempo is compared
 * as it is in force. The compiler refuses a new setting until it stands here.
 */
const IN_THE_NOTES = fieldTable<PlayingSettings>()({
  bass: false,
  drums: false,
  chops: false,
  organ: false,
  click: false,
  countIn: true,
  loop: true,
  passage: true,
  tempoShare: false,
  bassPlan: true,
  clickPlan: true,
  emptyBar: true,
  humanised: true,
  ladder: true,
});

/** What of a line is heard; likewise complete. */
const IN_THE_LINE = fieldTable<LinePiece>()({
  kind: false,
  id: false,
  name: false,
  chartText: true,
  key: true,
  metre: true,
  tempo: false,
  count: false,
  feel: true,
  level: false,
  techniques: false,
  hand: false,
  seed: true,
  playing: false,
  bars: true,
  parked: false,
  aims: false,
  sections: false,
  parkedSections: false,
  meant: false,
  takes: false,
  leftOut: false,
});

/** Two lines that sound the same: nothing has to be computed again for a change of title or notes. */
export const soundsTheSame = (one: LinePiece, other: LinePiece): boolean =>
  sameFields(IN_THE_LINE, one, other) &&
  sameFields(IN_THE_NOTES, one.playing, other.playing) &&
  practiceTempo(one) === practiceTempo(other);
