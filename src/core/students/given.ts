import { type Lesson, newLesson, setHand, setInstrument, setLevel, setNoteNames } from '../lesson';
import { type Given, REGISTER_LIMITS, type Student } from './entry';

/** What becomes of a lesson that is given; null where the student has as many as can be kept. */
export function giveLesson(student: Student, given: Omit<Given, 'tempo' | 'mend'>): Student | null {
  const isSame = (one: Given): boolean =>
    one.lesson === given.lesson && one.version === given.version && one.day === given.day;
  // Given twice a day is given once; its title may have changed in between.
  if (student.given.some(isSame))
    return {
      ...student,
      given: student.given.map((one) => (isSame(one) ? { ...one, title: given.title } : one)),
    };
  if (student.given.length >= REGISTER_LIMITS.given) return null;
  return { ...student, given: [...student.given, { ...given, tempo: null, mend: '' }] };
}

const sameGiving = (one: Given, other: Pick<Given, 'lesson' | 'version' | 'day'>): boolean =>
  one.lesson === other.lesson && one.version === other.version && one.day === other.day;

/** Notes of a lesson that was given how it went. */
export const setGiven = (
  student: Student,
  which: Pick<Given, 'lesson' | 'version' | 'day'>,
  change: Partial<Pick<Given, 'tempo' | 'mend'>>,
): Student => ({
  ...student,
  given: student.given.map((one) => (sameGiving(one, which) ? { ...one, ...change } : one)),
});

/** A lesson was not given after all. */
export const takeBack = (student: Student, which: Pick<Given, 'lesson' | 'version' | 'day'>): Student => ({
  ...student,
  given: student.given.filter((one) => !sameGiving(one, which)),
});

/** What is to be mended next, the latest lesson first; none where nothing was noted. */
export const toMend = ({ given }: Student): readonly Given[] =>
  given.filter(({ mend }) => mend.trim() !== '').toReversed();

/**
 * A new lesson that starts from a student: instrument, hand, level and note names. Nothing in it says whose it is;
 * the name stands on the handout where the teacher wants it there.
 * @param named - the name is to stand on the handout, and so travels with the lesson
 */
export function lessonFor(student: Student, id: string, named: boolean): Lesson {
  const { instrument, noteNames, hand, level } = student;
  const start = setNoteNames(setInstrument(newLesson(id, 'New lesson'), instrument), noteNames);
  const fitted = start.pieces.reduce(
    (lesson, piece) => setLevel(setHand(lesson, piece.id, hand), piece.id, level),
    start,
  );
  return named ? { ...fitted, handout: { ...fitted.handout, student: student.name } } : fitted;
}
