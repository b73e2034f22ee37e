import type { Finger } from '../../core/base';
import type { Instrument, Place } from '../../core/fretboard';
import type { Naming } from '../../core/theory';

/** A note on the neck with all that can be written on it. */
export interface NeckNote extends Place {
  /** `R`, `♭3`. */
  readonly degree: string;
  /** As the lesson names notes: `B♭`. */
  readonly name: string;
  readonly finger: Finger | null;
}

export interface FretboardRequest {
  /** What is shown, for the text alternative: `F7, chord tones`. */
  readonly title: string;
  /** A left-handed one is drawn mirrored. */
  readonly instrument: Instrument;
  /** How the strings are named. */
  readonly noteNames: Naming;
  readonly notes: readonly NeckNote[];
  /** What is written on the notes. */
  readonly show: 'degree' | 'name' | 'finger';
  /** The hand position (the fret under the first finger); null leaves it out. */
  readonly position: number | null;
  /** The position the hand goes to next; null or left out when it stays. */
  readonly nextPosition?: number | null;
  /** Keeps the rows over the strings free whether the hand moves or not, so that the strings stand still in play. */
  readonly steady?: boolean;
  /** The note that sounds now. */
  readonly sounding?: Place | null;
  /** What is written is as large as its place allows, to be read across a room once the picture is enlarged. */
  readonly large?: boolean;
  /** Frets to show, both included, from 1; left out, as many as the notes and the hand need. */
  readonly frets?: { readonly first: number; readonly last: number };
  /** CSS pixels. */
  readonly width: number;
}

export interface NeckLine {
  readonly kind: 'line';
  readonly role: 'string' | 'fret' | 'nut' | 'position' | 'next-position';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly stroke: number;
  readonly dashed: boolean;
}

export interface NeckText {
  readonly kind: 'text';
  readonly role: 'string-name' | 'fret-number' | 'position' | 'next-position';
  readonly text: string;
  /** The middle of the text, and its baseline. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly bold: boolean;
}

/** A note: a small plate on its string with what is written on it. */
export interface NeckPlate {
  readonly kind: 'plate';
  readonly text: string;
  /** The middle of the plate. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly size: number;
  /** A root has a heavier rim. */
  readonly root: boolean;
  /** Drawn in reverse while it sounds. */
  readonly sounding: boolean;
}

/** The picture as numbers, in CSS pixels. */
export interface FretboardLayout {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly (NeckLine | NeckText | NeckPlate)[];
  /** The whole picture in sentences, for those who do not see it. */
  readonly description: string;
}
