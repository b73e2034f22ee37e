/** A lesson's pieces: lines with their bars, and blank bars. */
import type { Bpm, DynamicSign, Fret, LineNote, Metre } from '../../base';
import type { FeelId } from '../../feel';
import type { HandSettings } from '../../fretboard';
import type { Aim, Level, MovableThing, StageThing, Technique } from '../../line';
import type { Key } from '../../theory';
import type { Count } from '../count';
import type { PlayingSettings } from '../playing';
import type { HandoutBlock } from './handout';

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
 * How often beat one is silent: not at all; in a bar of every phrase at least; in all bars of four but the first; in
 * every second bar. Bars are counted from the beginning of their section.
 */
export const SILENT_ONES = ['never', 'some bars', 'most', 'every second bar'] as const;
export type SilentOnes = (typeof SILENT_ONES)[number];

/**
 * What an aim asks, as the composer takes it (see {@link Aim}). An aim for a bar goes before one for its section,
 * and that before one for the line, in each thing that both speak of; so there are words for asking nothing.
 */
export interface AimTerms
  extends Pick<Aim, 'wanted' | 'allowed' | 'forbidden' | 'silence' | 'lowest' | 'highest' | 'degrees'> {
  /** `any` asks nothing. */
  readonly density?: 'sparse' | 'busy' | 'any';
  /** 0 leaves the hand free. */
  readonly position?: Fret;
  /** How often beat one is to be silent. */
  readonly silentOnes?: SilentOnes;
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

/** What blank bars ask the student's own line for. */
export type BlankPrompt = Pick<AimTerms, 'wanted' | 'degrees' | 'silentOnes'>;

/** Empty staff and tab for the student's own line. */
export interface BlankPiece {
  readonly kind: 'blank';
  readonly id: string;
  readonly name: string;
  readonly metre: Metre;
  readonly bars: number;
  /** They are written over the chords of the line beside them, and this is asked of it; free when left out. */
  readonly prompt?: BlankPrompt;
  /** Parts of the handout that this piece goes without. */
  readonly leftOut?: readonly HandoutBlock[];
}

export type Piece = LinePiece | BlankPiece;

/** Fields of a line that may be missing: what a version can go without although the tune has it. */
export const OPTIONAL_IN_LINE = [
  'count',
  'meant',
  'buildUp',
  'leftOut',
] as const satisfies readonly (keyof LinePiece)[];
