/** A stretch of sound in a bar, in ticks from the bar's beginning. */
export interface Sounding {
  readonly start: number;
  readonly duration: number;
}

/** 1 a whole note, 2 a half, 4 a quarter, … 64. */
export type NoteValue = 1 | 2 | 4 | 8 | 16 | 32 | 64;

/** One sign of the bar: a note, a piece of a longer note, or a rest. */
export interface NotatedEvent {
  readonly kind: 'note' | 'rest';
  /** Index of the sounding note; null for a rest. */
  readonly note: number | null;
  readonly start: number;
  readonly duration: number;
  readonly value: NoteValue;
  readonly dots: 0 | 1;
  /** Index into {@link NotatedBar.triplets}; null outside a triplet. */
  readonly triplet: number | null;
  /** The same note goes on in the next event. */
  readonly tied: boolean;
  /** A rest that fills the bar, whatever the metre, and stands in its middle. */
  readonly wholeBar: boolean;
}

export interface NotatedBar {
  readonly events: readonly NotatedEvent[];
  /** First and last event of each triplet. */
  readonly triplets: readonly { readonly first: number; readonly last: number }[];
  /** Indices of events that share a beam, two or more each. */
  readonly beams: readonly (readonly number[])[];
}
