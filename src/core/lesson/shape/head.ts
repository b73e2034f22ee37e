/** What is said once for a lesson, or for a version of it. */
import type { SpelledPitch } from '../../base';
import type { Naming } from '../../theory';

export interface LessonTexts {
  readonly title: string;
  /** The teacher's notes, printed on the handout. */
  readonly notes: string;
  /** How notes are named wherever one is read, apart from the page's language; letters when left out. */
  readonly noteNames?: Naming;
}

export interface InstrumentSettings {
  readonly openStrings: readonly SpelledPitch[];
  readonly frets: number;
  /** Millimetres from nut to bridge. */
  readonly scaleLength: number;
  /** Pictures of the neck are mirrored; staff and tab stay as they are. */
  readonly leftHanded?: boolean;
}
