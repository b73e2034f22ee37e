import { type Bpm, barRange, listed } from '../../../core/base';
import { type LinePiece, type LineSheet, type PlayingSettings, toldTempo } from '../../../core/lesson';
import type { TrackWishes } from '../../../core/performance';
import { boundsOf, mixOf, PARTS, type Part, passageOf, proposeLadder } from '../../../core/playing';
import type { Coding } from '../../../tracks';
import type { ClipLook } from './clip-film';

/** The parts of the band that a track can have besides the bass. */
export const OTHERS = PARTS.filter((part) => part !== 'bass');

export const BASS_WISHES = ['with and without bass', 'with bass', 'without bass'] as const;

/** Which bars are played and how often; the first may lie behind the last while they are being chosen. */
export interface PassageWishes {
  readonly first: number;
  readonly last: number;
  readonly rounds: number;
}

/** The passage at hand, or the whole line. */
export function proposedBars(piece: LinePiece, sheet: LineSheet): Pick<PassageWishes, 'first' | 'last'> {
  const { least, most } = boundsOf(sheet);
  return passageOf(piece, sheet) ?? { first: least, last: most };
}

/** The bars that were asked for; null for the whole line. */
export function passageAsked(sheet: LineSheet, wishes: PassageWishes): PlayingSettings['passage'] {
  const { least, most } = boundsOf(sheet);
  const [first, last] = [Math.min(wishes.first, wishes.last), Math.max(wishes.first, wishes.last)];
  return first <= least && last >= most ? null : { first, last };
}

/** What is played along with is counted in, also where the page's own playing is not. */
export const proposedCountIn = ({ playing: { countIn } }: LinePiece): PlayingSettings['countIn'] =>
  countIn === 0 ? 1 : countIn;

/** What is asked of the tracks of a line. */
export interface TracksWishes extends PassageWishes {
  readonly countIn: PlayingSettings['countIn'];
  readonly bass: (typeof BASS_WISHES)[number];
  readonly others: readonly Part[];
  readonly tempos: readonly Bpm[];
  readonly repeats: boolean;
  readonly coding: Coding;
}

export const MOST_ROUNDS = 20;

/** The tempos that are offered: the rungs of the lesson's ladder, or of one that is proposed, and the line's own. */
export function temposOf({ tempo, playing: { ladder } }: LinePiece): readonly Bpm[] {
  const rungs = ladder?.rungs ?? proposeLadder(tempo);
  return [...new Set([...rungs.map((rung) => rung.tempo), tempo])].sort((one, other) => one - other);
}

/** What a student mostly needs: the passage at hand four times, with and without bass, slower and at full tempo. */
export function proposedWishes(piece: LinePiece, sheet: LineSheet): TracksWishes {
  const offered = temposOf(piece);
  const slow = offered[Math.floor((offered.length - 1) / 2)] ?? piece.tempo;
  const others = OTHERS.filter((part) => piece.playing[part]);
  return {
    ...proposedBars(piece, sheet),
    rounds: 4,
    countIn: proposedCountIn(piece),
    bass: 'with and without bass',
    others: others.length === 0 ? ['drums'] : others,
    tempos: [...new Set([slow, piece.tempo])],
    repeats: false,
    coding: 'every telephone',
  };
}

/** One track that was asked for. */
export interface TrackPlan {
  readonly parts: readonly Part[];
  readonly mix: ReturnType<typeof mixOf>;
  readonly rounds: TrackWishes;
  /** Tempo and parts for the player that shows it: `84 bpm, without bass`. */
  readonly title: string;
  /** What its file's name says beside lesson, piece, key, tempo and parts. */
  readonly more: string;
}

const partsTitle = (bass: boolean, others: readonly Part[]): string => {
  const band = others.filter((part) => part !== 'click');
  if (band.length === 3) return bass ? 'with bass' : 'without bass';
  const all = [...(bass ? ['bass'] : []), ...others];
  return `${listed(all)} only`;
};

/** The tracks that come of what is asked, the slowest first; none without a part that sounds. */
export function plansOf(piece: LinePiece, sheet: LineSheet, wishes: TracksWishes): readonly TrackPlan[] {
  const passage = passageAsked(sheet, wishes);
  const basses = wishes.bass === 'with and without bass' ? [true, false] : [wishes.bass === 'with bass'];
  const where = passage === null ? [] : [barRange(passage.first, passage.last)];
  return wishes.tempos.flatMap((tempo) =>
    basses
      .filter((bass) => bass || wishes.others.length > 0)
      .map((bass): TrackPlan => {
        const parts = PARTS.filter((part) => (part === 'bass' ? bass : wishes.others.includes(part)));
        const on = (part: Part): boolean => parts.includes(part);
        const playing = {
          ...piece.playing,
          bass,
          drums: on('drums'),
          chops: on('chops'),
          organ: on('organ'),
          click: on('click'),
        };
        return {
          parts,
          mix: mixOf(playing),
          rounds: { tempo, rounds: wishes.rounds, countIn: wishes.countIn, passage, repeats: wishes.repeats },
          title: [`${toldTempo(sheet, tempo)} bpm`, partsTitle(bass, wishes.others), ...where].join(', '),
          more: [...where, ...(wishes.repeats ? ['to repeat'] : [])].join(', '),
        };
      }),
  );
}

/** The clip that is made where nothing more is asked: the whole line once, wide and light. */
export const proposedClip = (piece: LinePiece) => ({
  asked: {
    tempo: piece.tempo,
    rounds: 1,
    countIn: proposedCountIn(piece),
    passage: null,
    repeats: false,
  } satisfies TrackWishes,
  look: { shape: 'wide', ground: 'light', technique: null } satisfies ClipLook,
});
