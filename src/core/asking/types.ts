/** What can be asked of a line, in the order of how hard it is to answer (ours). */
export const QUESTION_KINDS = [
  'names',
  'empty beat',
  'clap',
  'degree',
  'third',
  'degrees',
  'frets',
  'answering bar',
  'lead',
  'left-out bar',
] as const;
export type QuestionKind = (typeof QUESTION_KINDS)[number];

/** 1 what is read off the sheet, 2 what is known of chord and rhythm, 3 what is heard between bars (ours). */
export const DIFFICULTIES = [1, 2, 3] as const;
export type Difficulty = (typeof DIFFICULTIES)[number];

/** A question about a line, with its answer, which is computed from the notes. */
export interface Question {
  readonly kind: QuestionKind;
  readonly difficulty: Difficulty;
  /** Indices of the written bars that it is about; what is listened to. */
  readonly bars: readonly number[];
  /** Index of a bar that has to be left empty on the sheet. */
  readonly empty?: number;
  /** A sentence or two, for who listens and taps. */
  readonly text: string;
  /** The same on a sheet of paper that shows no answer, where it reads otherwise. */
  readonly onPaper?: string;
  readonly answer: string;
  /** What can be tapped, in a fixed order: two things at least. */
  readonly choices: readonly string[];
  /** What is tapped to answer, one after the other; each is among the choices. */
  readonly taps: readonly string[];
  /** How many blanks the answer fills on paper. */
  readonly blanks: number;
}
