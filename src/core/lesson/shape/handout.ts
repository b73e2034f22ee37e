/** What is printed of a lesson. */

export type Paper = 'A4' | 'Letter';

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
  'questions',
  'answers',
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
  readonly questions?: QuestionSettings;
}

/** How many questions are asked of each line, and how hard they are at most (see `DIFFICULTIES` of the asking room). */
export interface QuestionSettings {
  readonly count: number;
  readonly difficulty: 1 | 2 | 3;
  /** Another number draws other questions; 0 when left out. */
  readonly seed?: number;
}

/** Draws of questions before they begin again. */
export const DRAWS_OF_QUESTIONS = 1000;

/** The most questions of one line. */
export const MOST_QUESTIONS = 20;

/** How much of a handout's practice steps is kept: more would fill a page of their own. */
export const PRACTICE_STEPS = { most: 12, length: 300 } as const;

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
  'questions',
  'twoUp',
  'binding',
] as const satisfies readonly (keyof HandoutSettings)[];
