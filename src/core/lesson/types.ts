import type { Bpm, DynamicSign, Fret, LineNote, Metre, SpelledPitch } from '../base';
import type { FeelId } from '../feel';
import type { HandSettings } from '../fretboard';
import type { Aim, Level, MovableThing, StageThing, Technique } from '../line';
import type { Interval, Key, Naming } from '../theory';
import type { Count } from './count';
import type { PlayingSettings } from './playing';

/** The lesson file's own name for itself, and the version of its shape. */
export const LESSON_FORMAT = 'ground-bass-lesson';
export const LESSON_VERSION = 3;

export type Paper = 'A4' | 'Letter';

/** One written bar of the line, with the chords it was written for, so that an edit of the chart can find it again. */
export interface LineBar {
  readonly id: string;
  /** The harmony of the bar the notes were written for (see `barSignature` of the chart). */
  readonly harmony: string;
  readonly origin: 'composed' | 'idea' | 'hand';
  /** Protected from being composed again. */
  readonly kept: boolean;
  readonly notes: readonly LineNote[];
  /**
   * What was written by hand and is too much for the bar, until it is mended: kept with the lesson, so that neither
   * undoing nor closing the page loses it; not printed and not played. Starts count on from the bar's beginning, the
   * first at the bar's end or behind it. The bar's last note goes on in the first of these where it is tied and ends
   * where that begins.
   */
  readonly over?: readonly LineNote[];
  /** The hand position in which the teacher keeps the hand in this bar; left out, the hand is free. */
  readonly position?: Fret;
  /** In order, one a place. They belong to the bar and stay when its notes are composed again. */
  readonly dynamics?: readonly DynamicSign[];
  /** A word above the bar, as the teacher wrote it; it stays when the bar is composed again. */
  readonly words?: string;
}

/** How much can be written above a bar: a word or a short sentence. */
export const BAR_WORDS_LENGTH = 80;

/** Where an aim holds; sections and bars by their id, so that it goes along with them when the chart is edited. */
export type AimWhere =
  | { readonly kind: 'line' }
  | { readonly kind: 'section'; readonly id: string }
  | { readonly kind: 'bar'; readonly id: string };

/**
 * What an aim asks, as the composer takes it (see {@link Aim}). An aim for a bar goes before one for its section,
 * and that before one for the line, in each thing that both speak of; so there are words for asking nothing.
 */
export interface AimTerms
  extends Pick<Aim, 'wanted' | 'allowed' | 'forbidden' | 'silence' | 'lowest' | 'highest'> {
  /** `any` asks nothing. */
  readonly density?: 'sparse' | 'busy' | 'any';
  /** 0 leaves the hand free. */
  readonly position?: Fret;
}

/** What the teacher asks of the line, a section or a bar, beyond the level and the techniques of the piece. */
export interface LessonAim extends AimTerms {
  readonly where: AimWhere;
}

/** A section of the chart, with an id that lasts while the chart is edited. */
export interface LineSection {
  readonly id: string;
  /** As the chart has it; null for bars outside a named section. */
  readonly name: string | null;
}

/** A bar of a take, with the chords it was written for. */
export interface TakeBar {
  readonly harmony: string;
  readonly notes: readonly LineNote[];
}

/** A whole line that was composed before and can be recalled. */
export interface StoredTake {
  readonly id: string;
  readonly seed: number;
  /** What the composed line cost under the composer's score: takes are ranked by it. Null for a line that was changed. */
  readonly cost: number | null;
  readonly bars: readonly TakeBar[];
}

/** A bar of a build-up's stage as the teacher changed it. */
export interface StageEdit {
  /** The last of the things that the stage adds. */
  readonly stage: StageThing;
  /** Id of the bar. */
  readonly bar: string;
  /** The harmony that it was changed for; over another one the stage is what it was without the change. */
  readonly harmony: string;
  readonly notes: readonly LineNote[];
}

/** How the stages of a line stand on the sheet: one under the other, or in one place to flip through. */
export const STAGE_VIEWS = ['one under the other', 'in one place'] as const;

/** A line's build-up on the sheet. Its stages are derived from the line; stored is what the teacher chose and changed. */
export interface BuildUp {
  readonly view: (typeof STAGE_VIEWS)[number];
  /** In the order in which they come; the usual one where it names none. */
  readonly order: readonly MovableThing[];
  /** Things that get no stage of their own. */
  readonly leftOut: readonly StageThing[];
  /** How often each stage is played before the next. */
  readonly rounds: number;
  readonly edits: readonly StageEdit[];
}

/** The most rounds of a stage. */
export const MOST_STAGE_ROUNDS = 16;

export interface LinePiece {
  readonly kind: 'line';
  readonly id: string;
  readonly name: string;
  readonly chartText: string;
  /** Null: the key is found from the chords. */
  readonly key: Key | null;
  readonly metre: Metre;
  readonly tempo: Bpm;
  /** How the tempo is told, for feels that are counted fast and slow; the feel's own way when left out. */
  readonly count?: Count;
  readonly feel: FeelId;
  readonly level: Level;
  readonly techniques: readonly Technique[];
  readonly hand: HandSettings;
  readonly seed: number;
  readonly playing: PlayingSettings;
  /** One entry a written bar of the chart, in order. */
  readonly bars: readonly LineBar[];
  /** Bars whose place in the chart went away with an edit; the teacher can put them back. */
  readonly parked: readonly LineBar[];
  /** At most one for the line, a section or a bar; one whose section or bar went away waits for its return. */
  readonly aims: readonly LessonAim[];
  /** One entry a section of the chart, in order; shorter until an edit of the chart or an aim needs them. */
  readonly sections: readonly LineSection[];
  /** Sections that went away while an aim was for them. */
  readonly parkedSections: readonly LineSection[];
  /** Findings that are not said again; none when left out. */
  readonly meant?: readonly MeantFinding[];
  /** Takes worth recalling, the latest last. */
  readonly takes: readonly StoredTake[];
  /** The line's build-up; not on the sheet when left out. */
  readonly buildUp?: BuildUp;
  /** Parts of the handout that this piece goes without. */
  readonly leftOut?: readonly HandoutBlock[];
}

/** A finding of the lesson check that the teacher has answered with *I mean it*. */
export interface MeantFinding {
  /** Id of the bar it is about; null for the line. */
  readonly bar: string | null;
  readonly about: 'notes' | 'aims' | 'hand' | 'music';
  /** Of what it finds (see `meanIt`): where that changes, it is another finding. */
  readonly fingerprint: number;
}

/** Empty staff and tab for the student's own line. */
export interface BlankPiece {
  readonly kind: 'blank';
  readonly id: string;
  readonly name: string;
  readonly metre: Metre;
  readonly bars: number;
  /** Parts of the handout that this piece goes without. */
  readonly leftOut?: readonly HandoutBlock[];
}

export type Piece = LinePiece | BlankPiece;

/** The parts of the handout that can be left out and put in order. */
export const HANDOUT_BLOCKS = [
  'name',
  'facts',
  'chart',
  'shapes',
  'neck',
  'rhythm',
  'clapping',
  'music',
  'stages',
  'explained',
  'study',
  'chops',
  'organ',
  'drums',
  'practice',
  'diary',
  'notes',
  'cautions',
] as const;
export type HandoutBlock = (typeof HANDOUT_BLOCKS)[number];

/** What the handout shows. What is left out stands for the usual choice, which the handout room knows. */
export interface HandoutSettings {
  readonly paper: Paper;
  readonly degrees: boolean;
  readonly fingers: boolean;
  readonly counting?: boolean;
  /** A row of the chords' Roman numerals. */
  readonly numerals?: boolean;
  /** Roman numerals over the tab where the hand takes another position. */
  readonly positions?: boolean;
  /** Staff, tab or both; both when left out. */
  readonly parts?: 'both' | 'staff' | 'tab';
  /** The parts that are printed, in their order; each at most once. */
  readonly blocks?: readonly HandoutBlock[];
  readonly print?: 'normal' | 'large';
  /** The teacher wishes for a single page. */
  readonly onePage?: boolean;
  /** Two pages on each sheet of paper, which is cut or folded in the middle. */
  readonly twoUp?: boolean;
  /** A wider margin at the left, to be punched or bound. */
  readonly binding?: boolean;
  /** The teacher's own line at the head of the first page. */
  readonly header?: string;
  /** Class or student. */
  readonly student?: string;
  /** A PNG or JPEG as a data address. */
  readonly logo?: string;
  /** A QR code of the lesson's link at the end; none when left out. */
  readonly code?: boolean;
  /** What to do with the sheet, a sentence a box to tick; the usual steps when left out. */
  readonly steps?: readonly string[];
}

/** How much of a handout's practice steps is kept: more would fill a page of their own. */
export const PRACTICE_STEPS = { most: 12, length: 300 } as const;

export interface InstrumentSettings {
  readonly openStrings: readonly SpelledPitch[];
  readonly frets: number;
  /** Millimetres from nut to bridge. */
  readonly scaleLength: number;
  /** Pictures of the neck are mirrored; staff and tab stay as they are. */
  readonly leftHanded?: boolean;
}

/** The notes that a version has in a bar of the tune in place of the tune's, in the key of the version. */
export interface VersionNotes extends Pick<LineBar, 'harmony' | 'origin' | 'notes' | 'over'> {
  /**
   * The notes that the tune had in this bar when the version got its own, in the key of the tune: where the tune has
   * others by now, it was mended since.
   */
  readonly was: readonly LineNote[];
}

/** What a version has of its own in a bar of the tune; what is left out is as in the tune. */
export interface VersionBar {
  readonly id: string;
  readonly written?: VersionNotes;
  readonly kept?: boolean;
  /** 0 leaves the hand free. */
  readonly position?: Fret;
  /** Empty for none. */
  readonly dynamics?: readonly DynamicSign[];
  /** '' for none. */
  readonly words?: string;
}

/** Fields of a line that may be missing: what a version can go without although the tune has it. */
export const OPTIONAL_IN_LINE = [
  'count',
  'meant',
  'buildUp',
  'leftOut',
] as const satisfies readonly (keyof LinePiece)[];

/** What a version has of its own in a line of the tune. Its hand and its level are always its own. */
export interface VersionLine {
  /** Of the line. */
  readonly id: string;
  /** How far the line lies from the tune's, whose key it does not share; not at all when left out. */
  readonly moved?: Interval;
  /** In place of what the tune has. */
  readonly own: Partial<Omit<LinePiece, 'kind' | 'id' | 'bars' | 'parked'>>;
  readonly without?: readonly (typeof OPTIONAL_IN_LINE)[number][];
  readonly bars?: readonly VersionBar[];
  /** Bars that this version alone has. */
  readonly added?: readonly LineBar[];
  /** The ids of its bars, where the version has a chart of its own. */
  readonly order?: readonly string[];
  /** The ids of its parked bars, where they are not the tune's. */
  readonly parked?: readonly string[];
}

/** Fields of the handout's settings that may be missing. */
export const OPTIONAL_IN_HANDOUT = [
  'counting',
  'numerals',
  'positions',
  'parts',
  'blocks',
  'print',
  'onePage',
  'header',
  'student',
  'logo',
  'code',
  'steps',
  'twoUp',
  'binding',
] as const satisfies readonly (keyof HandoutSettings)[];

/**
 * The same tune as it was changed for one student or class: it holds what differs from the lesson and nothing else.
 * `src/core/versions` makes a plain lesson of it, and of an edited lesson what differs.
 */
export interface LessonVersion {
  /** Never given again, also when the version is removed. */
  readonly id: string;
  /** `for Ada`, `for Wednesday's class`. */
  readonly name: string;
  /** In place of what the lesson has; the instrument is always its own. */
  readonly own: Partial<Pick<Lesson, 'title' | 'notes' | 'noteNames'>> & Pick<Lesson, 'instrument'>;
  readonly handout?: Partial<HandoutSettings>;
  /** Settings of the handout that the lesson has and the version goes without. */
  readonly bare?: readonly (typeof OPTIONAL_IN_HANDOUT)[number][];
  readonly lines: readonly VersionLine[];
  /** Whole pieces that are in no other version, or are in place of a piece of the lesson with the same id. */
  readonly pieces?: readonly Piece[];
  /** The ids of pieces of the lesson that are not in this version. */
  readonly without?: readonly string[];
  /** The ids of its pieces, where their order is another one than the lesson's. */
  readonly order?: readonly string[];
}

/** The document: everything that is saved. */
export interface Lesson {
  readonly format: typeof LESSON_FORMAT;
  readonly version: typeof LESSON_VERSION;
  readonly id: string;
  readonly title: string;
  /** The teacher's notes, printed on the handout. */
  readonly notes: string;
  readonly instrument: InstrumentSettings;
  readonly handout: HandoutSettings;
  /** How notes are named wherever one is read, apart from the page's language; letters when left out. */
  readonly noteNames?: Naming;
  /** In the order of the sheet; never empty. Where there are versions, these are the tune that they share. */
  readonly pieces: readonly Piece[];
  /** The same tune for other students or classes; none when left out. */
  readonly versions?: readonly LessonVersion[];
  /** The version that is being worked on; the tune when left out. */
  readonly open?: string;
  /** Numbers of ids up to this one are in use elsewhere, in other versions or in removed ones. */
  readonly idsUpTo?: number;
}
