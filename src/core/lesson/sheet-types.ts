import type { Bpm, DynamicSign, LineNote, Metre } from '../base';
import type { Chart, ChartBar, ChartProblem } from '../chart';

import type { Feel } from '../feel';
import type { FingeredNote, Fingering, Instrument } from '../fretboard';
import type { BarAnalysis } from '../line';
import type { Key, KeyGuess, Naming } from '../theory';
import type { Count } from './count';

/** A note with everything computed about it that the sheet shows. */
export interface SheetNote {
  readonly note: LineNote;
  /** Null when the pitch does not lie on the instrument. */
  readonly fingered: FingeredNote | null;
  /** `R`, `♭3`, `8`; '' where there is no chord. */
  readonly degreeText: string;
}

export interface SheetBar {
  readonly written: ChartBar;
  readonly notes: readonly SheetNote[];
  readonly analysis: BarAnalysis;
  readonly kept: boolean;
  /** As the teacher wrote them; left out where there are none. */
  readonly dynamics?: readonly DynamicSign[];
  /** A word above the bar. */
  readonly words?: string;
}

/** What the chart of a line piece tells by itself, whatever notes stand under it. */
export interface ChartReading {
  readonly chart: Chart;
  readonly problems: readonly ChartProblem[];
  /** The key at the beginning; a bar in another one carries it (`written.key`). */
  readonly key: Key;
  /** How note names are written; letters when left out. */
  readonly noteNames?: Naming;
  /** The best guesses from the chords and the teacher's own notes, the best first; empty without either. */
  readonly keyGuesses: readonly KeyGuess[];
  /** Sections whose chords are clearly in another key than the one they are read in, which the teacher chose. */
  readonly otherKeys: readonly { readonly section: number; readonly key: Key }[];
}

/** A line piece with all that is derived from it: what the score, the handout and the player read. */
export interface LineSheet extends ChartReading {
  readonly kind: 'line';
  readonly id: string;
  readonly name: string;
  readonly metre: Metre;
  readonly tempo: Bpm;
  /** How the teacher wants the tempo told; the feel's own way when left out. */
  readonly count?: Count;
  readonly feel: Feel;
  readonly instrument: Instrument;
  readonly bars: readonly SheetBar[];
  readonly fingering: Fingering;
  /** Bars taken out of a line: the music goes on behind the last of them. */
  readonly excerpt?: true;
  /** Indices of bars that stand empty, to be written in. */
  readonly toWrite?: readonly number[];
}

/** Empty bars on staff and tab. */
export interface BlankSheet {
  readonly kind: 'blank';
  readonly id: string;
  readonly name: string;
  readonly metre: Metre;
  readonly bars: number;
  readonly instrument: Instrument;
}

export type Sheet = LineSheet | BlankSheet;
