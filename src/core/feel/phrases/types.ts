import type { Metre } from '../../base';

/**
 * What a bar does in its phrase: states the motif, answers it, lifts it to the high point, breathes (or rests on
 * a cadence), turns round into the beginning, or ends for good.
 */
export const BAR_SLOTS = ['S', 'A', 'L', 'C', 'T', 'E'] as const;
export type BarSlot = (typeof BAR_SLOTS)[number];

/**
 * Parts of a bar, for bars with several chords: two beats (anywhere, the first two, the last two), one beat, the long beat
 * of 7/8 (one and a half).
 */
export const PART_SLOTS = ['H', 'H1', 'H2', 'Q', 'D'] as const;
export type PartSlot = (typeof PART_SLOTS)[number];

export type Slot = BarSlot | PartSlot;

/** The pitch of a note, counted from the anchor: the chord's bass note in an octave that the search chooses. */
export type Role =
  /** A step of the chord's scale, 1 the anchor, 8 its octave; `octave` −1 for `_`. */
  | { readonly kind: 'step'; readonly step: number; readonly octave: number }
  /** The chord's colour: its own seventh, the sixth of a plain major chord, the ♭7 of a plain minor one. */
  | { readonly kind: 'colour'; readonly octave: number }
  /** The ♭3 that slides into a major third, and the ♯4 on the way to 5: short notes. */
  | { readonly kind: 'blue third'; readonly octave: number }
  | { readonly kind: 'sharp fourth'; readonly octave: number }
  /** The note before once more. */
  | { readonly kind: 'repeat' };

/** Where a contour may stand: only where the chord goes on, only before the same chord, only before another. */
export type ContourTag = 'goes on' | 'before same' | 'before change';

/** When a note begins and how long it lasts, in beats from the beginning of its slot. */
export interface Beat {
  readonly start: number;
  readonly duration: number;
}

/** A rhythm with its pitches: what one bar, or a part of one, plays. */
export interface Contour {
  /** Unique in its book. */
  readonly id: string;
  readonly slot: Slot;
  readonly grid: string;
  /** The pitches as they are written in the book. */
  readonly text: string;
  readonly beats: readonly Beat[];
  /** The first notes; the last {@link leads} notes of the contour have no role. */
  readonly roles: readonly Role[];
  /** Notes at the end that are solved against the first note of whatever comes next. */
  readonly leads: number;
  readonly tags: readonly ContourTag[];
}

/** Two or four bars that belong together: a question and its answer are written as one. */
export interface PhraseModel {
  readonly id: string;
  readonly bars: readonly Contour[];
}

/** A bar of a tune: what it does in the phrase, and the ways of playing it in its one rhythm, the first as a rule. */
export interface TuneBar {
  readonly slot: BarSlot;
  readonly contours: readonly Contour[];
}

/** One rhythmic signature with its planned answers. */
export interface Theme {
  readonly id: string;
  /** What it is, in a few words for a person. */
  readonly words: string;
  readonly levels: { readonly least: number; readonly most: number };
  readonly contours: Readonly<Partial<Record<Slot, readonly Contour[]>>>;
  readonly models: readonly PhraseModel[];
  /** Its eight bars in their order, where they are written as one; null where the plan orders them. */
  readonly tune: readonly TuneBar[] | null;
}

/** The themes of a feel in one metre. */
export interface MetrePhrases {
  readonly metre: Metre;
  /** The first is the plainest: it is whole from level 0 on, and lends what another theme lacks. */
  readonly themes: readonly Theme[];
}

/** All that a feel's bass lines are made of. */
export interface PhraseBook {
  /** A walk moves on with every beat; a riff is a tune with holes that comes back. */
  readonly manner: 'walk' | 'riff';
  /** Whether a chromatic note may last a beat (walking lines) or an eighth at most. */
  readonly chromatics: 'a beat' | 'short';
  /** A blues: plain major chords take the ♭7 where a seventh is asked for. */
  readonly blues: boolean;
  readonly source: string;
  /** The feel's own metre first. */
  readonly metres: readonly [MetrePhrases, ...MetrePhrases[]];
}
