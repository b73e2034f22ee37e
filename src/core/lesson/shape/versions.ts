/** The versions of a lesson: what each has of its own beside the tune that they share. */
import type { DynamicSign, Fret, LineNote } from '../../base';
import type { Interval } from '../../theory';
import type { HandoutSettings, OPTIONAL_IN_HANDOUT } from './handout';
import type { InstrumentSettings, LessonTexts } from './head';
import type { LineBar, LinePiece, OPTIONAL_IN_LINE, Piece } from './pieces';

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
  readonly own: Partial<LessonTexts> & { readonly instrument: InstrumentSettings };
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
