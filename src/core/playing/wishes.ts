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

/** The parts that can be switched on and off, in the order of the score. */
export const PARTS = ['bass', 'drums', 'chops', 'organ', 'click'] as const;
export type Part = (typeof PARTS)[number];

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

/** Which parts are heard, and how loud each is against its place in the mix: 1 where nothing is said. */
type Mix = Readonly<Record<Part, boolean>> & { readonly volumes?: Readonly<Partial<Record<Part, number>>> };

/** What the teacher wants to hear. */
export function mixOf({ bass, drums, chops, organ, click, volumes }: PlayingSettings): Mix {
  const heard = { bass, drums, chops, organ, click };
  if (volumes === undefined) return heard;
  const shares: Partial<Record<Part, number>> = {};
  for (const part of PARTS) shares[part] = (volumes[part] ?? 100) / 100;
  return { ...heard, volumes: shares };
}

/** The switches that leave only the bass, or everyone but the bass; the click stays as it is. */
export const bassAlone = (alone: boolean) => ({ bass: alone, drums: !alone, chops: !alone, organ: !alone });

/** Whether the playing sentence sends the student up the tempo ladder. */
export const climbs = ({ ladder }: PlayingSettings): boolean => ladder?.climbed === true;

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
  volumes: false,
  countIn: true,
  loop: true,
  passage: true,
  tempoShare: false,
  bassPlan: true,
  clickPlan: true,
  emptyBar: true,
  intro: true,
  ending: true,
  drumWay: true,
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
  buildUp: false,
  leftOut: false,
});

/** Two lines that sound the same: nothing has to be computed again for a change of title or notes. */
export const soundsTheSame = (one: LinePiece, other: LinePiece): boolean =>
  sameFields(IN_THE_LINE, one, other) &&
  sameFields(IN_THE_NOTES, one.playing, other.playing) &&
  practiceTempo(one) === practiceTempo(other);
