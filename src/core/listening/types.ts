/** A note that is to be played. Times are seconds on the clock of the hearing. */
export interface ExpectedNote {
  readonly start: number;
  readonly end: number;
  readonly midi: number;
  /** A dead note: a stroke without a pitch. */
  readonly dead: boolean;
  /** Begun without a pluck, by a hammering finger or as the string's own going on: it may be too soft to be heard. */
  readonly soft: boolean;
  /** Index of the written bar. */
  readonly bar: number;
  /** Rounds played before it. */
  readonly round: number;
  /** Length of the beat in seconds. */
  readonly beat: number;
}

/** A silence that is to be kept. */
export interface ExpectedRest {
  readonly start: number;
  readonly end: number;
  readonly bar: number;
  readonly round: number;
}

/** A bar in which is judged what is heard. */
export interface ExpectedBar {
  readonly start: number;
  readonly end: number;
  readonly bar: number;
  readonly round: number;
  /** Beats a minute. */
  readonly tempo: number;
}

/** All in the order of time. */
export interface Expected {
  readonly notes: readonly ExpectedNote[];
  readonly rests: readonly ExpectedRest[];
  readonly bars: readonly ExpectedBar[];
}

/** A note that was heard. */
export interface HeardNote {
  readonly start: number;
  /** Where it fell silent or the next one began. */
  readonly end: number;
  /** A fraction of a half step is kept; null where no pitch was clear. */
  readonly midi: number | null;
  /** Nobody struck it, as far as it was heard: it began by another pitch, and when is known only roughly. */
  readonly joined?: true;
  /** A string that sounded already may have been struck again, or a drum beside it: it counts where a note is written. */
  readonly faint?: true;
}

/** From when to when nothing could be heard: the room was too loud, the input too strong, or sound was lost. */
export interface Deafness {
  readonly from: number;
  readonly to: number;
}

export type NoteVerdict =
  | { readonly kind: 'played' }
  /** So many half steps above the written pitch, below where negative. */
  | { readonly kind: 'other pitch'; readonly halfSteps: number }
  | { readonly kind: 'left out' }
  /** It is not known whether it was played. */
  | { readonly kind: 'not heard' };

export interface NoteReport {
  readonly note: ExpectedNote;
  readonly verdict: NoteVerdict;
  /** Seconds after its place, before it where negative; null where nothing was heard in its place. */
  readonly late: number | null;
  /** The same in beats. */
  readonly lateBeats: number | null;
  /** How long it was held against what is written; null where that is not known. */
  readonly held: 'as written' | 'short' | 'long' | null;
}

/** What was played and is not written. */
export interface ExtraReport {
  readonly heard: HeardNote;
  readonly bar: number;
  readonly round: number;
}

export interface RestReport {
  readonly rest: ExpectedRest;
  readonly verdict: 'kept' | 'filled' | 'not heard';
}

/** Whether the beat of a round went forward, held back or stayed; null where too little was heard. */
export type Pace = 'steady' | 'rushing' | 'dragging';

export interface BarReport {
  readonly bar: number;
  readonly round: number;
  readonly notes: readonly NoteReport[];
  readonly extras: readonly ExtraReport[];
  readonly rests: readonly RestReport[];
}

export interface RoundReport {
  readonly round: number;
  /** Beats a minute at which it was played. */
  readonly tempo: number;
  readonly bars: readonly BarReport[];
  readonly pace: Pace | null;
  /** The middle one of how late its notes were, in seconds; null where none was heard. */
  readonly late: number | null;
}

export type ListeningReport = readonly RoundReport[];
