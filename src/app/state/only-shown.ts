import type { NewerLesson } from '../../core/lesson';
import type { FileReading } from './editor-store';

const NOT_CHANGED =
  'This lesson is of a newer Ground Bass and is only shown here, so it was not changed. Make a copy to change it (the button stands above the sheet).';

const NOT_OF_NOW =
  'This is an earlier state of the lesson and is only shown, so it was not changed. Bring it back or make a copy of it first (the buttons stand above the sheet).';

/** Why what is only shown is not changed. */
export const whyOnlyShown = (reading: FileReading | null): string =>
  reading?.only?.earlier === undefined ? NOT_CHANGED : NOT_OF_NOW;

/** What is said of a lesson that came with more than this copy knows. */
export const toldOf = (
  { leftOut, whole }: NewerLesson,
  sentences: readonly string[],
  makeCopy: () => void,
): FileReading => ({
  sentences,
  only: { isReduced: leftOut.length > 0, whole, makeCopy },
});
