import type { DynamicLevel, Metre, Sign } from '../../core/base';
import type { Accidental, CountMark, NotatedEvent } from '../../core/notation';
import type { DrawnSymbol } from '../../core/theory';

/** A note or rest with everything that stands at it. */
export interface ContentEvent extends NotatedEvent {
  /** Steps above the staff's middle line (in the bass clef written D3); 0 for a rest. */
  readonly height: number;
  readonly accidental: Accidental | null;
  /** All heads from low to high where several can share a stem; left out for a line's one note. */
  readonly heads?: readonly Head[];
  /** What stands at the attack, and a fermata at the note's end; an x-head at every piece of its note. */
  readonly signs: readonly Sign[];
  /** How the note is left, at its last piece. */
  readonly exit: ContentExit | null;
  /** What the tab says; null for a rest and for the later pieces of a tied note. */
  readonly fret: { readonly string: number; readonly text: string } | null;
  readonly degree: string;
  readonly finger: string;
  /** The hand's position in Roman numerals where the note takes another one; '' elsewhere. */
  readonly position: string;
  /** The same pitch goes on from the bar to the left, or only from `elsewhere`: a repeat's end, another ending. */
  readonly tiedIn: 'left' | 'elsewhere' | null;
  /** The same pitch goes on in the bar that follows. */
  readonly tiedOut: boolean;
}

/** One of several heads on a stem. */
export interface Head {
  readonly height: number;
  readonly accidental: Accidental | null;
  readonly cross: boolean;
  /** In brackets: struck so softly that it is felt more than heard. */
  readonly ghost: boolean;
  /** A circle over the stem: an open hi-hat. */
  readonly open: boolean;
}

/** A sign that begins at a note and leads away from it. */
export interface ContentExit {
  readonly sign: Sign;
  /** To the next note; else to nothing. */
  readonly leads: boolean;
  /** Which way the pitch goes: −1 down, 0 for the same pitch, 1 up. */
  readonly rises: -1 | 0 | 1;
}

/** A dynamic or a hairpin's beginning or end. */
export interface DynamicMark {
  readonly tick: number;
  readonly level: DynamicLevel | null;
  readonly hairpin: Hairpin | null;
}

export type Hairpin = 'crescendo' | 'diminuendo';

export interface ChordMark {
  readonly tick: number;
  readonly text: string;
  /** The same, in the parts that are set apart. */
  readonly parts: DrawnSymbol;
  /** The same chord went before: written only at the start of a system. */
  readonly again: boolean;
  /** What it is in its key, as a Roman numeral; '' where none is asked for or the mark is no chord. */
  readonly numeral: string;
}

export type BarEnd = 'single' | 'double' | 'repeat' | 'final';

/** The clef and the lines that a bar is written on: two clefs, five lines for drums, one line for a rhythm alone. */
export type StaffKind = 'bass' | 'treble' | 'drums' | 'rhythm';

/** What is known of a bar besides its notes and its place in the line: it is the same wherever it moves. */
export interface BarFacts {
  readonly staff: StaffKind;
  readonly length: number;
  readonly metre: Metre;
  /** Ticks of the whole bar before it, where it is only the end of one. */
  readonly countedFrom: number;
  readonly showsMetre: boolean;
  /** Sharps (positive) or flats of the signature in force, −7 to 7; null writes none. */
  readonly signature: number | null;
  /** The signature before, where this bar changes it. */
  readonly changesSignature: { readonly from: number } | null;
  /** Nothing is written in the bar, not even a rest. */
  readonly blank: boolean;
  readonly chords: readonly ChordMark[];
  /** A section or the coda begins here, which starts a system unless short sections are joined. */
  readonly startsSection: boolean;
  /** It is only the end of a bar. */
  readonly pickup: boolean;
  readonly section: string | null;
  readonly repeatStart: boolean;
  readonly end: BarEnd;
  /** `x3` at a repeat that is played more than twice. */
  readonly times: string | null;
  readonly ending: EndingMark | null;
  /** The segno and the coda where the bar begins. */
  readonly waySigns: readonly ('segno' | 'coda')[];
  /** What is written of the way where the bar ends: `D.S. al Coda`. */
  readonly wayWords: readonly string[];
  /** `To Coda` is among them, and has the coda's sign behind it. */
  readonly leadsToCoda: boolean;
  readonly dynamics: readonly DynamicMark[];
  /** A hairpin that comes from the bar before. */
  readonly hairpin: Hairpin | null;
  /** What leads into the first note from the bar before. */
  readonly entered: ContentExit | null;
  /** A word above the bar. */
  readonly words: string | null;
}

export interface BarSigns {
  readonly events: readonly ContentEvent[];
  readonly beams: readonly (readonly number[])[];
  readonly triplets: readonly { readonly first: number; readonly last: number }[];
  readonly counts: readonly CountMark[];
}

export interface ContentBar extends BarFacts, BarSigns {
  /** What stands on a second staff under this one, for one player; its bar has no signs of the chart of its own. */
  readonly lower?: ContentBar;
  /** The same text for the same bar, wherever it stands. */
  readonly key: string;
}

/** A bar under an ending's bracket. */
export interface EndingMark {
  /** `1.` where the bracket begins, '' where it goes on. */
  readonly text: string;
  /** Where the bracket stops; `closed` turns down at a repeat, `open` does not. */
  readonly stops: 'closed' | 'open' | null;
}

export interface Content {
  readonly bars: readonly ContentBar[];
  /** How each bar is counted. */
  readonly numbers: readonly number[];
  readonly strings: number;
  /** `Swing eighths` above the first bar; null for straight ones. */
  readonly feel: string | null;
}
