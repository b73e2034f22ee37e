import { barRange, capitalised, listed } from '../../../core/base';
import { type DrumWay, feelById, feelMetre } from '../../../core/feel';
import {
  type LinePiece,
  type LineSheet,
  type PlayingSettings,
  tempoWords,
  toldTempo,
} from '../../../core/lesson';
import { climbs, EVERY_BEAT, EVERY_ROUND, PARTS, passageOf, practiceTempo } from '../../../core/playing';

/** `from 63 to 126 bpm`. */
export function ladderWords(piece: LinePiece): string {
  const rungs = piece.playing.ladder?.rungs ?? [];
  const tempos = rungs.map(({ tempo }) => tempo);
  const [first, last] = [tempos[0], tempos.at(-1)];
  if (first === undefined || last === undefined) return '';
  return tempos.length === 1
    ? `of ${tempoWords(piece, first)}`
    : `from ${toldTempo(piece, first)} to ${tempoWords(piece, last)}`;
}

/** `Rung 2 of 5: 79 bpm, time 1 of 3`, or `Round 3` of a loop; '' where neither a ladder is climbed nor a loop is on. */
export function rungWords(piece: LinePiece, step: number, round: number): string {
  const { ladder, loop } = piece.playing;
  const rung = ladder?.rungs[step];
  if (ladder?.climbed !== true || rung === undefined) return loop ? `Round ${round + 1}` : '';
  const goesOn = loop && step === ladder.rungs.length - 1;
  const time = goesOn ? `time ${round + 1}` : `time ${Math.min(round + 1, rung.rounds)} of ${rung.rounds}`;
  return `Rung ${step + 1} of ${ladder.rungs.length}: ${toldTempo(piece, rung.tempo)} bpm, ${time}`;
}

const bars = (count: number): string => (count === 1 ? 'one bar' : `${count} bars`);

function bassWords({ bass, bassPlan = EVERY_ROUND }: PlayingSettings): readonly string[] {
  if (!bass || bassPlan.kind === 'every round') return [];
  return bassPlan.kind === 'every second round'
    ? ['the bass plays every second round']
    : [`the bass plays ${bars(bassPlan.bars)}, then rests for ${bars(bassPlan.bars)}`];
}

/** The beats of the click as they are said. */
export const CLICKS = {
  'every beat': 'every beat',
  'two and four': '2 and 4',
  'off-beats': 'the & only',
} as const;

function clickWords({ click, clickPlan = EVERY_BEAT }: PlayingSettings): readonly string[] {
  const { beats, dropOut } = clickPlan;
  if (!click || (beats === 'every beat' && dropOut === null)) return [];
  const out =
    dropOut === null ? '' : `, out for ${bars(dropOut.silent)} after every ${bars(dropOut.sounding)}`;
  return [`the click sounds on ${CLICKS[beats]}${out}`];
}

const volumeWords = ({ volumes = {} }: PlayingSettings): readonly string[] =>
  PARTS.flatMap((part) => {
    const share = volumes[part] ?? 100;
    return share === 100 ? [] : [`${part} at ${share} %`];
  });

/** The patterns that the drums of a piece can be played in; null where its feel has one only. */
export const drumWaysOf = ({ feel, metre }: LinePiece) => feelMetre(feelById(feel), metre)?.ways ?? null;

/** The name of the pattern that is chosen; `usual` in a feel that has one only. */
export function drumWayOf(piece: LinePiece): DrumWay {
  const { drumWay = 'usual' } = piece.playing;
  return drumWaysOf(piece)?.others.some(({ name }) => name === drumWay) === true ? drumWay : 'usual';
}

function drumWords(piece: LinePiece): readonly string[] {
  const way = drumWayOf(piece);
  return way === 'usual' ? [] : [`drums with the ${way}`];
}

type Clauses = (playing: PlayingSettings, piece: LinePiece) => readonly string[];

/** A clause where something is so. */
const where =
  (isSo: (playing: PlayingSettings) => boolean, words: string): Clauses =>
  (playing) =>
    isSo(playing) ? [words] : [];

/** The beginning of the sentence has it, or it is said with another setting. */
const ELSEWHERE: Clauses = () => [];

/** What is said of each setting that is not as it is when nobody has changed it, in this order. */
const CLAUSES: { readonly [Name in keyof Required<PlayingSettings>]: Clauses } = {
  bass: ELSEWHERE,
  drums: ELSEWHERE,
  chops: ELSEWHERE,
  organ: ELSEWHERE,
  click: ELSEWHERE,
  countIn: ELSEWHERE,
  loop: ELSEWHERE,
  passage: ELSEWHERE,
  tempoShare: ELSEWHERE,
  ladder: ELSEWHERE,
  volumes: volumeWords,
  drumWay: (_, piece) => drumWords(piece),
  bassPlan: bassWords,
  clickPlan: clickWords,
  emptyBar: where(
    (playing) => playing.emptyBar === true && (playing.loop || climbs(playing)),
    'an empty bar follows every round',
  ),
  intro: where(({ intro }) => intro === true, 'an intro of one bar'),
  ending: where(({ ending, loop }) => ending === false && !loop, 'no last hit'),
  humanised: where(({ humanised }) => humanised === false, 'everything falls exactly on the beat'),
};

/** What else is set, clause by clause: everything that is not as it is when nobody has changed it. */
export const furtherWords = (piece: LinePiece): readonly string[] =>
  Object.values(CLAUSES).flatMap((clauses) => clauses(piece.playing, piece));

/** `Bars 1 to 4, looped, 95 bpm, without bass.` */
export function inShort(piece: LinePiece, sheet: LineSheet): string {
  const { playing } = piece;
  const passage = passageOf(piece, sheet);
  const silent = PARTS.filter((part) => part !== 'click' && !playing[part]);
  return `${[
    passage === null ? 'All bars' : capitalised(barRange(passage.first, passage.last)),
    ...(playing.loop ? ['looped'] : []),
    climbs(playing) ? `up a ladder ${ladderWords(piece)}` : tempoWords(piece, practiceTempo(piece)),
    ...(silent.length === 0 ? [] : [`without ${listed(silent)}`]),
    ...furtherWords(piece),
  ].join(', ')}.`;
}
