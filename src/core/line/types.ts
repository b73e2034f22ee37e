import type { Bpm, Fret, LineNote, MidiNumber } from '../base';
import type { Chart } from '../chart';
import type { Feel } from '../feel';
import type { HandSettings, Instrument } from '../fretboard';
import type { Degree, Key, Naming } from '../theory';
import type { RuleNumber } from './rules/numbers';

/** What an idea teaches. A new piece begins with those that belong to its feel and level. */
export const TECHNIQUES = [
  'chord tones',
  'scale steps',
  'beat one silent',
  'long silences',
  'octave',
  'approach note',
  'anticipation',
] as const;
export type Technique = (typeof TECHNIQUES)[number];

/** Teaching levels, the easiest first. */
export const LEVELS = [0, 1, 2, 3, 4, 5] as const;
/** Teaching level: the notes, rhythms, neck and keys that a line may ask of a player. */
export type Level = (typeof LEVELS)[number];

/** A step above the root that an aim can ask for, whatever its alteration. */
export type DegreeStep = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** Where an aim holds: everywhere, in a section or in a written bar, by index. */
export type AimPlace =
  | { readonly kind: 'line' }
  | { readonly kind: 'section'; readonly section: number }
  | { readonly kind: 'bar'; readonly bar: number };

/**
 * What the teacher asks of a line, a section or a bar. Aims are constraints: the composer keeps all it can and
 * says of the others which bar cannot. Where aims overlap, the stricter one holds.
 */
export interface Aim {
  readonly where: AimPlace;
  /** Techniques to show: in the bar itself, or in at least one bar of every phrase of a line or section. */
  readonly wanted?: readonly Technique[];
  /** Techniques that may be shown there although the line as a whole does without them. */
  readonly allowed?: readonly Technique[];
  readonly forbidden?: readonly Technique[];
  /** `sparse`: at most one note a beat on average, and rather fewer; `busy`: more notes than beats. */
  readonly density?: 'sparse' | 'busy';
  /** Least share of each bar (0–1) that stays silent. */
  readonly silence?: number;
  readonly lowest?: MidiNumber;
  readonly highest?: MidiNumber;
  /** Hand position: the frets from here to three above it, and open strings. */
  readonly position?: Fret;
  /** Steps above the chord's root that its notes keep to, 1 the root; an octave is the root. */
  readonly degrees?: readonly DegreeStep[];
}

/** Everything about a piece that shapes its line, and how what is said of it names notes. */
export interface LineRequest {
  readonly chart: Chart;
  readonly key: Key;
  readonly feel: Feel;
  readonly tempo: Bpm;
  readonly level: Level;
  /** Techniques that the line may show; chord tones are always allowed. */
  readonly techniques: ReadonlySet<Technique>;
  readonly instrument: Instrument;
  readonly hand: HandSettings;
  readonly aims?: readonly Aim[];
  /** For reasons and findings; letters when left out. The music does not depend on it. */
  readonly noteNames?: Naming;
}

/** The notes of each written bar, in order; a bar without notes is an empty list. */
export type LineNotes = readonly (readonly LineNote[])[];

export interface ComposeRequest extends LineRequest {
  readonly seed: number;
  /** One entry a written bar: the notes to leave exactly as they are, or null where the composer is free. */
  readonly kept: readonly (readonly LineNote[] | null)[];
}

/** The things that an aim may ask. */
export type AimTerm = 'wanted' | 'forbidden' | 'density' | 'silence' | 'range' | 'position' | 'degrees';

/** An aim that a line does not keep somewhere. */
export interface AimMiss {
  /** Index in the request's aims. */
  readonly aim: number;
  /** What of the aim is not kept. */
  readonly term: AimTerm;
  /** Techniques that are missing, or shown although they are ruled out; else none. */
  readonly techniques: readonly Technique[];
  /** Indices of the written bars that cannot keep it: one bar, or a phrase that should show a technique once. */
  readonly bars: readonly number[];
  /** One sentence: which bars cannot keep what, and why. */
  readonly message: string;
  /** One sentence: the nearest that the line has there instead. */
  readonly nearest: string;
}

export interface ComposedLine {
  readonly bars: LineNotes;
  /** What the line costs under the composer's score: takes of one request are ranked by it, the least first. */
  readonly cost: number;
  /** What could not be done and in which bar, in sentences; empty when all is well. Each miss is among them. */
  readonly remarks: readonly string[];
  /** Aims that are not kept, by place; empty when all are. */
  readonly misses: readonly AimMiss[];
}

/** What a note does, by the notes and chords around it (the non-chord tones as Open Music Theory defines them). */
export type NoteFunction =
  | 'chord tone'
  | 'scale step'
  | 'passing'
  | 'neighbour'
  | 'approach'
  | 'anticipation';

export interface NoteAnalysis {
  /** Above the root of the chord it sounds with; null without a chord. */
  readonly degree: Degree | null;
  /** The degree as written on the sheet: `R`, `♭3`, `8` for the octave above the bar's lower root; '' without a chord. */
  readonly degreeText: string;
  readonly function: NoteFunction | null;
}

export interface BarAnalysis {
  readonly notes: readonly NoteAnalysis[];
  readonly techniques: readonly Technique[];
  /** One short sentence in the trade's words, true of these notes: what is taught and why it fits here. */
  readonly reason: string;
}

export interface Idea {
  /** Stable for the same notes: two ideas with the same notes have the same id. */
  readonly id: string;
  readonly notes: readonly LineNote[];
  readonly analysis: BarAnalysis;
}

/** The ideas for a bar, and what there is to say where they are fewer than usual or none. */
export interface IdeaOffer {
  readonly ideas: readonly Idea[];
  /** One sentence, or null where there are as many as usual. */
  readonly remark: string | null;
}

/** A musical rule that a line breaks, with the place. */
export interface Breach {
  /** The number of the rule in the project's list of rules. */
  readonly rule: RuleNumber;
  /** Index of the written bar. */
  readonly bar: number;
  /** One sentence: what is heard and what would mend it. */
  readonly message: string;
}
