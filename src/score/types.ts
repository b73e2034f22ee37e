import type { Sheet } from '../core/lesson';
import type { KeyboardSheet, PartSheet } from '../core/performance';

/** What can be engraved: a line, empty bars, or a part of the rhythm section, which has a staff alone or two. */
export type Engravable = Sheet | PartSheet | KeyboardSheet;

/** What the caller chooses about the drawing. Lengths are CSS pixels. */
export interface ScoreOptions {
  /** Width of every system. */
  readonly width: number;
  /** Distance between two staff lines; 10 when left out. A staff is four spaces high. */
  readonly staffSpace?: number;
  /** A row of degrees (`R ♭3 5`) under the tab. */
  readonly degrees: boolean;
  /** A row of fretting fingers (1–4, 0 for the open string) under the tab. */
  readonly fingers: boolean;
  /** A row of counting (`1 & 2 &`) under the tab. */
  readonly counting: boolean;
  /** A row of the chords' Roman numerals (`I vi V7/IV`) under the tab; none when left out. */
  readonly numerals?: boolean;
  /** Roman numerals over the notes where the hand takes another position; none when left out. */
  readonly positions?: boolean;
  /** The line's rhythm alone, on one line, with its counting where that is asked for; `parts` is then `staff`. */
  readonly rhythm?: boolean;
  /** Both staff and tab when left out. */
  readonly parts?: 'both' | 'staff' | 'tab';
  /** Whether `Swing eighths` stands over the first bar of a swung line; it does when left out. */
  readonly feel?: boolean;
  /** Most bars in a system; a narrow width gets fewer. */
  readonly barsPerSystem: number;
  /** No system holds more bars than that, however thin their music; else some may. */
  readonly strictly?: boolean;
  /** The share of their natural spacing to which bars may close up for a system to hold them; our own when left out. */
  readonly tightest?: number;
  /** As many bars stand in a system as have room, even where their notes are then out of proportion. */
  readonly givesWay?: boolean;
  /** A section of one or two bars shares a system with its neighbour where there is room; else every one starts a system. */
  readonly joinsSections?: boolean;
  /** A bar number at the start of every system. */
  readonly measureNumbers: boolean;
  /** Sizes of the texts as font sizes; each follows the staff space when left out. */
  readonly textSizes?: Partial<TextSizes>;
}

/** Font sizes in CSS pixels. */
export interface TextSizes {
  readonly chord: number;
  readonly tab: number;
  readonly degree: number;
  readonly finger: number;
  readonly counting: number;
  readonly section: number;
  readonly small: number;
}

/** Where a moment of a bar stands; `tick` counts from the bar's beginning. */
export interface Position {
  readonly tick: number;
  /** CSS pixels from the system's left edge: the middle of the notehead or rest. */
  readonly x: number;
}

export interface BarBox {
  /** Index of the written bar, from 0. */
  readonly bar: number;
  /** Left and right bar line, in CSS pixels from the system's left edge; a system's first bar includes its clef. */
  readonly x: number;
  readonly width: number;
  /** Every beginning of a note or rest in order, the first at or after tick 0, the last at the bar's end. */
  readonly positions: readonly Position[];
}

/** A straight or filled line of ink, in the drawing's own units (see {@link SystemLayout.ink}). */
export interface PathInk {
  readonly kind: 'path';
  /** SVG path data. */
  readonly d: string;
  readonly role: InkRole;
  /** Line width; 0 fills the path instead. */
  readonly stroke: number;
  readonly box: InkBox;
}

export interface TextInk {
  readonly kind: 'text';
  readonly text: string;
  readonly role: InkRole;
  /** Left end of the baseline. */
  readonly x: number;
  readonly y: number;
  readonly font: ScoreFont;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly size: number;
  readonly box: InkBox;
  /** Parts of the text that together are the whole of it, where some are smaller and raised. */
  readonly runs?: readonly TextRun[];
  /** SVG path data of the same look, from the left end of the baseline on, of what is no word: signs and numbers. */
  readonly outline?: string;
}

export interface TextRun {
  readonly text: string;
  readonly size: number;
  /** How far its baseline stands over the text's. */
  readonly rise: number;
  /** How far left of the end of the run before it begins; at that end when left out. */
  readonly back?: number;
}

/** The families of `loadScoreFonts`, with the fallback after them. */
export type ScoreFont = 'Bravura' | 'Academico';

/** The rectangle that a piece of ink covers. */
export interface InkBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What a piece of ink is: its class in the drawing. */
export type InkRole =
  | 'staff-line'
  | 'tab-line'
  | 'bar-line'
  | 'brace'
  | 'clef'
  | 'key-signature'
  | 'time-signature'
  | 'note'
  | 'ledger-line'
  | 'stem'
  | 'beam'
  | 'flag'
  | 'accidental'
  | 'dot'
  | 'rest'
  | 'tie'
  | 'tuplet'
  | 'articulation'
  | 'slur'
  | 'slide'
  | 'fermata'
  | 'dynamic'
  | 'hairpin'
  | 'playing-sign'
  | 'words'
  | 'fret'
  | 'chord'
  | 'section'
  | 'bar-number'
  | 'ending'
  | 'repeat-count'
  | 'way'
  | 'feel'
  | 'swing'
  | 'degree'
  | 'numeral'
  | 'finger'
  | 'counting'
  | 'position'
  | 'row-name';

export type Ink = PathInk | TextInk;

export interface SystemLayout {
  /** From 0. */
  readonly index: number;
  /** Top of the system in the score, in CSS pixels; systems follow each other without gaps. */
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /**
   * First and last staff line, first and last tab line, in CSS pixels from the system's top. Where one of the two
   * is not drawn, it gives the lines of the other; of two joined staves the second stands in the tab's place.
   */
  readonly staff: { readonly top: number; readonly bottom: number };
  readonly tab: { readonly top: number; readonly bottom: number };
  readonly bars: readonly BarBox[];
  /** The same text for the same drawing: a system whose fingerprint did not change need not be drawn again. */
  readonly fingerprint: string;
  /** CSS pixels a unit of {@link ink}: its coordinates count from the system's top left corner, a staff space is 10. */
  readonly scale: number;
  readonly ink: readonly Ink[];
}

/** Numbers only: nothing is drawn yet. */
export interface ScoreLayout {
  readonly width: number;
  readonly height: number;
  readonly systems: readonly SystemLayout[];
}

export interface PlayheadSpan {
  readonly top: number;
  readonly bottom: number;
}

export interface PlayheadPlace {
  /** Index of the system. */
  readonly system: number;
  /** CSS pixels from the system's left edge. */
  readonly x: number;
}
