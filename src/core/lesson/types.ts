import type { HandoutSettings } from './shape/handout';
import type { InstrumentSettings, LessonTexts } from './shape/head';
import type { Piece } from './shape/pieces';
import type { LessonVersion } from './shape/versions';

export * from './shape/handout';
export * from './shape/head';
export * from './shape/pieces';
export * from './shape/versions';

/** The lesson file's own name for itself, and the version of its shape. */
export const LESSON_FORMAT = 'ground-bass-lesson';
export const LESSON_VERSION = 3;

/** The document: everything that is saved. */
export interface Lesson extends LessonTexts {
  readonly format: typeof LESSON_FORMAT;
  readonly version: typeof LESSON_VERSION;
  readonly id: string;
  readonly instrument: InstrumentSettings;
  readonly handout: HandoutSettings;
  /** In the order of the sheet; never empty. Where there are versions, these are the tune that they share. */
  readonly pieces: readonly Piece[];
  /** The same tune for other students or classes; none when left out. */
  readonly versions?: readonly LessonVersion[];
  /** The version that is being worked on; the tune when left out. */
  readonly open?: string;
  /** Numbers of ids up to this one are in use elsewhere, in other versions or in removed ones. */
  readonly idsUpTo?: number;
}
