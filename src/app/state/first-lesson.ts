import { type Lesson, type NewerLesson, SAMPLE_TITLES, sampleLesson } from '../../core/lesson';
import type { LessonStorage } from '../storage';
import type { Rescue } from './editor-store';
import { AS_IT_CAME, type Base, ONLY_SHOWN } from './keeper';

/** What the page starts with. */
interface FirstLesson {
  readonly lesson: Lesson;
  /** Its revision on this device; a sample needs none. */
  readonly base: Base;
  /** How it is noted as open. */
  readonly name: string;
  /** What is noted on this device as open. */
  readonly noted: string | null;
  /** Why the device's lessons cannot be reached, or null. */
  readonly refused: string | null;
  readonly rescue: Rescue | null;
  /** What is to be said of a lesson of a newer copy of the app. */
  readonly newer: { readonly shown: NewerLesson; readonly sentences: readonly string[] } | null;
}

/** How an untouched sample is noted as open; a lesson is noted by its id, and no id is of this form. */
export const sampleMark = (index: number): string => `sample ${index}`;

/** The number of the sample that a note of what was open means; null for a lesson. */
function markedSample(name: string): number | null {
  const index = SAMPLE_TITLES.findIndex((_, each) => sampleMark(each) === name);
  return index === -1 ? null : index;
}

const SUSPECT =
  'The last start did not come to its end while it opened a lesson, so that lesson was not opened again: a sample is shown instead. The lesson is kept on this device as it is, under Lessons; save it as a file too, before you try it once more.';
const STANDS_IN = 'The lesson you had open was left as it was; a sample is shown instead.';

/**
 * The lesson that was open last, or a sample on the first visit; a lesson that cannot be read, or with which the last
 * start came to no end, is left alone and offered as a file.
 * @param suspects - what was being opened by starts that came to no end
 */
export async function firstLesson(
  storage: LessonStorage,
  suspects: ReadonlySet<string>,
  freshId: () => string,
): Promise<FirstLesson> {
  const sample = (index: number): FirstLesson => ({
    lesson: sampleLesson(index, freshId()),
    base: AS_IT_CAME,
    name: sampleMark(index),
    noted: null,
    refused: null,
    rescue: null,
    newer: null,
  });
  const last = await storage.loadLast();
  if (!last.ok) return { ...sample(0), refused: last.problem };
  const { name, found } = last.value;
  if (name === null) return sample(0);
  const index = markedSample(name);
  if (index !== null) return { ...sample(index), noted: name };
  if (found.kind === 'none') return { ...sample(0), noted: name };
  if (suspects.has(name)) {
    // The next start is not to come to the suspect again.
    await storage.rememberOpened(sampleMark(0));
    return { ...sample(0), noted: sampleMark(0), rescue: { id: name, sentence: SUSPECT } };
  }
  if (found.kind === 'unreadable')
    return { ...sample(0), noted: name, rescue: { id: name, sentence: `${found.sentence} ${STANDS_IN}` } };
  if (found.kind === 'newer') {
    const lesson = { ...found.shown.lesson, id: freshId() };
    return { ...sample(0), lesson, base: ONLY_SHOWN, name, noted: name, newer: found };
  }
  return {
    lesson: found.lesson,
    base: found.revision,
    name,
    noted: name,
    refused: null,
    rescue: null,
    newer: null,
  };
}
