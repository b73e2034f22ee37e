import type { NoteMarks, Pins, SpelledPitch } from '../../base';
import type { Navigation } from '../../chart';
import type { Interval, Mode } from '../../theory';
import type { FoundDynamic, FoundMetre } from '../reading/found';
import type { XmlNode } from './xml-tree';

/** A note as it sounds, wherever its part writes it. Times in ticks from the beginning of its measure. */
export interface RawNote {
  readonly start: number;
  readonly duration: number;
  readonly pitch: SpelledPitch;
  readonly staff: number;
  readonly voice: string;
  readonly tieStart: boolean;
  readonly tieStop: boolean;
  readonly letRing: boolean;
  readonly marks: NoteMarks | null;
  readonly pins: Pins;
}

/** Something that stands in a voice and has no place in a lesson. */
export interface RawExtra {
  readonly staff: number;
  readonly voice: string;
  /** In words, as a sentence lists it: `ornaments`. */
  readonly what: string;
}

export interface RawHarmony {
  readonly at: number;
  readonly node: XmlNode;
  /** From the part's writing to its sound. */
  readonly interval: Interval;
}

/** A key signature as it sounds; the mode is often left out. */
export interface RawKey {
  readonly fifths: number;
  readonly mode: Mode | null;
  readonly interval: Interval;
}

export interface RawTempo {
  readonly at: number;
  /** A minute. */
  readonly quarters: number;
}

export interface RawMeasure {
  readonly implicit: boolean;
  /** As far as anything in it goes. */
  readonly length: number;
  readonly metre: FoundMetre;
  readonly key: RawKey | null;
  readonly notes: readonly RawNote[];
  readonly extras: readonly RawExtra[];
  readonly harmonies: readonly RawHarmony[];
  readonly rehearsal: string | null;
  /** By the staff they stand at. */
  readonly dynamics: readonly (FoundDynamic & { readonly staff: number })[];
  readonly words: readonly string[];
  readonly tempi: readonly RawTempo[];
  readonly swing: number | null;
  /** Signs and words that lead elsewhere in the piece. */
  readonly navigation: readonly Navigation[];
  readonly forward: boolean;
  /** How often in all; null without a repeat. */
  readonly backward: number | null;
  readonly ending: readonly number[] | null;
  /** What the reader of the part noticed about the measure, without its full stop. */
  readonly remarks: readonly string[];
}

export interface RawTuning {
  /** Line of the tab from the lowest, and the open string on it, as written. */
  readonly lines: ReadonlyMap<number, SpelledPitch>;
}

export interface RawStaff {
  /** `F`, `G`, `TAB`, `percussion` … */
  readonly clef: string;
  readonly tuning: RawTuning | null;
  readonly capo: boolean;
}

export interface RawPart {
  readonly id: string;
  readonly name: string;
  /** Instrument names of the part. */
  readonly instruments: string;
  /** General MIDI programme from 1; null without one. */
  readonly program: number | null;
  readonly percussion: boolean;
  readonly staves: ReadonlyMap<number, RawStaff>;
  readonly measures: readonly RawMeasure[];
}
