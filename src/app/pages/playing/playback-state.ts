import type { PlayPlace } from '../../../core/performance';

/** A stage that is heard in its turn. */
export interface HeardStage {
  readonly sheetId: string;
  readonly name: string;
}

/** What is heard: a piece as the ledge says, or one idea in its place. */
export type Heard =
  | { readonly kind: 'piece'; readonly pieceId: string }
  | { readonly kind: 'idea'; readonly pieceId: string; readonly ideaId: string }
  /** The stages of a line's build-up, one after the other, a rung for each: their sheets' ids and their names. */
  | { readonly kind: 'stages'; readonly pieceId: string; readonly stages: readonly HeardStage[] }
  /** The click or a tone by itself; it belongs to no piece. */
  | { readonly kind: 'alone'; readonly pieceId: ''; readonly name: string };

/** A place at which playing was paused. */
interface Paused {
  readonly pieceId: string;
  /** Index of the written bar, with whose beginning it goes on. */
  readonly bar: number;
  readonly place: PlayPlace;
}

export interface PlaybackState {
  readonly kind: 'stopped' | 'preparing' | 'playing';
  /** A sentence when the last attempt failed. */
  readonly fault: string | null;
  readonly heard: Heard | null;
  /** Where it goes on after a pause; null while nothing is paused. */
  readonly paused: Paused | null;
  /** Index of the written bar that sounds, or null. */
  readonly bar: number | null;
  /** Index of the written bar that what is heard begins with. */
  readonly first: number;
  /** It is counted in: the music has not begun yet. */
  readonly counting: boolean;
  /** Index of the rung that is climbed, and the rounds finished on it. */
  readonly step: number;
  readonly round: number;
  /** It has played so long without a break that a rest would do good; until the next beginning. */
  readonly restDue: boolean;
}

export const SILENT: PlaybackState = {
  kind: 'stopped',
  fault: null,
  heard: null,
  paused: null,
  bar: null,
  first: 0,
  counting: false,
  step: 0,
  round: 0,
  restDue: false,
};

/** The id of the sheet whose notes sound, or null. */
export const heardSheet = ({ heard, step }: PlaybackState): string | null =>
  heard === null ? null : heard.kind === 'stages' ? (heard.stages[step]?.sheetId ?? null) : heard.pieceId;
