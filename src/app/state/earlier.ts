import type { Lesson } from '../../core/lesson';
import type { FileReading } from './editor-store';

/** An earlier state of a lesson, under the id of its lesson. */
export interface Earlier {
  readonly lesson: Lesson;
  /** What is said of it while it is looked at. */
  readonly sentences: readonly string[];
}

interface Deeds {
  readonly bringBack: () => void;
  readonly leave: () => void;
  readonly makeCopy: () => void;
}

/** What stands above the sheet while an earlier state is looked at. */
export const earlierStateOf = ({ lesson, sentences }: Earlier, deeds: Deeds): FileReading => ({
  sentences,
  only: { isReduced: false, whole: lesson, makeCopy: deeds.makeCopy, earlier: deeds },
});
