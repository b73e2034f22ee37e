import type { Lesson } from '../../core/lesson';
import type { FileReading } from './editor-store';

/** An earlier state of a lesson, under the id of its lesson. */
export interface Earlier {
  readonly lesson: Lesson;
  /** When it was kept, for a person to read. */
  readonly when: string;
}

interface Deeds {
  readonly bringBack: () => void;
  readonly leave: () => void;
  readonly makeCopy: () => void;
}

/** What stands above the sheet while an earlier state is looked at. */
export const earlierStateOf = ({ lesson, when }: Earlier, deeds: Deeds): FileReading => ({
  sentences: [
    `This is “${lesson.title}” as it was ${when}. It is only shown: play it, print it, bring it back in place of the lesson, or make a copy of it.`,
    'What stands now is kept as an earlier state, too, and bringing back can be taken back with Undo.',
  ],
  only: { isReduced: false, whole: lesson, makeCopy: deeds.makeCopy, earlier: deeds },
});
