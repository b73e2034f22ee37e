import { inKey } from '../../../core/composing';
import { TUNINGS } from '../../../core/fretboard';
import { type Lesson, setInstrument } from '../../../core/lesson';
import type { HandAndKey } from './hand-and-key';

/** The lesson on the chosen strings, for the chosen hand. */
export function strungAs(lesson: Lesson, chosen: HandAndKey): Lesson {
  const tuning = TUNINGS.find(({ id }) => id === chosen.tuning);
  if (tuning === undefined && chosen.leftHanded === null) return lesson;
  return setInstrument(lesson, {
    ...(tuning === undefined ? {} : { openStrings: tuning.openStrings }),
    ...(chosen.leftHanded === null ? {} : { leftHanded: chosen.leftHanded }),
  });
}

/** The lesson in the chosen key, where one is chosen. */
export const inChosenKey = (lesson: Lesson, pieceId: string, { key, how }: HandAndKey): Lesson =>
  key === null || how === null ? lesson : inKey(lesson, pieceId, key, how);
