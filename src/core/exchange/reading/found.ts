import type { DynamicLevel, NoteMarks, Pins, SpelledPitch } from '../../base';
import type { Navigation } from '../../chart';
import type { FeelId } from '../../feel';
import type { Chord, Key } from '../../theory';

/** What any file of music gives, before it becomes a lesson. Times are ticks, 960 a quarter note, not yet rounded. */
export interface FoundScore {
  /** Null where the file does not say it. */
  readonly title: string | null;
  readonly name: string | null;
  /** Who made it and whose it is, a line each, for the teacher's notes. */
  readonly credits: readonly string[];
  /** Quarter notes a minute at the beginning. */
  readonly tempo: number | null;
  /** Long to short within a pair of eighths; null where nothing is said. */
  readonly swing: number | null;
  /** Null where the file names none. */
  readonly feel: FeelId | null;
  /** Written by this program: what it says was meant so. */
  readonly own: boolean;
  /** The part is written for a bass, and not a tune. */
  readonly forBass: boolean;
  readonly tuning: FoundTuning | null;
  readonly bars: readonly FoundBar[];
}

export interface FoundTuning {
  /** The highest (string 1) first, as they sound. */
  readonly openStrings: readonly SpelledPitch[];
}

/** A time signature as it stands in a file: a lesson may not have it. */
export interface FoundMetre {
  readonly count: number;
  readonly unit: number;
}

export interface FoundBar {
  readonly metre: FoundMetre;
  /** Only the first bar can be an upbeat. */
  readonly pickup: boolean;
  /** Of what stands in the bar; 0 for an empty one. */
  readonly length: number;
  /** The key in force; null before the first one. */
  readonly key: Key | null;
  readonly chords: readonly FoundChord[];
  /** In order, without overlap. */
  readonly notes: readonly FoundNote[];
  /** A section begins here. */
  readonly section: string | null;
  readonly repeatStart: boolean;
  /** How often the passage is played in all. */
  readonly repeatEnd: number | null;
  readonly ending: readonly number[] | null;
  /** In any order; left out where a kind of file has none. */
  readonly dynamics?: readonly FoundDynamic[];
  /** Words over the bar. */
  readonly words?: string;
  /** Signs of the way through the piece: segno, coda, fine and jumps. */
  readonly navigation?: readonly Navigation[];
}

/** A level, a hairpin's beginning, or the end of one. */
export interface FoundDynamic {
  readonly at: number;
  readonly level: DynamicLevel | null;
  readonly hairpin: 'crescendo' | 'diminuendo' | null;
  readonly stops: boolean;
}

export interface FoundChord {
  readonly at: number;
  /** Null for `N.C.`. */
  readonly chord: Chord | null;
}

export interface FoundNote {
  readonly start: number;
  readonly duration: number;
  readonly pitch: SpelledPitch;
  /** Goes on over the bar line. */
  readonly tiedOn: boolean;
  /** Null for a plain note. */
  readonly marks: NoteMarks | null;
  readonly pins: Pins;
}
