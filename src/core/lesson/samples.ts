import ferryQueue from './samples/ferry-queue.json';
import lastTramHome from './samples/last-tram-home.json';
import type { Lesson } from './types';

/**
 * Lessons to try, as lesson files; each line is what the composer makes of its piece. The weekly class is invented,
 * and so are its tunes and their progressions. They are taken at their word, so that a first visit needs no validator:
 * `tests/lesson/samples.test.ts` holds them against it.
 */
const SAMPLES = [ferryQueue, lastTramHome] as unknown as readonly Lesson[];

export const SAMPLE_TITLES: readonly string[] = SAMPLES.map(({ title }) => title);

/**
 * A sample lesson, ready to be heard, with blank bars for the student's own line below.
 * @param id names the lesson in storage.
 * @throws RangeError when there is no such sample.
 */
export function sampleLesson(index: number, id: string): Lesson {
  const sample = SAMPLES[index];
  if (sample === undefined) {
    throw new RangeError(`There is no sample ${index}`);
  }
  return { ...sample, id };
}
