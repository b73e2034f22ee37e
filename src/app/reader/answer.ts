import { lessonInPage, loadReader } from '../../core/exchange';
import { parseLesson } from '../../core/lesson';
import type { ReadingAnswer, ReadingJob } from './messages';

/**
 * Reads a file; what reads music is fetched when such a file comes.
 * @param tell - hears how much of it is read, from 0 to 1
 */
export async function answerReading(
  job: ReadingJob,
  tell: (share: number) => void = () => undefined,
): Promise<ReadingAnswer> {
  if (job.kind === 'lesson') {
    const text = new TextDecoder().decode(job.bytes);
    return { kind: 'lesson', read: parseLesson(lessonInPage(text) ?? text) };
  }
  if (job.kind === 'picture') return { kind: 'picture', read: await pictureOf(job) };
  const { readFile } = await loadReader();
  return { kind: 'music', read: readFile(job.bytes, job.title, job.wishes ?? undefined, tell) };
}

/** Decodes a picture and makes it smaller: of a large one both take seconds. */
async function pictureOf({ file, width, height }: Extract<ReadingJob, { readonly kind: 'picture' }>) {
  try {
    return await createImageBitmap(file, {
      resizeWidth: width,
      resizeHeight: height,
      resizeQuality: 'high',
    });
  } catch {
    return null;
  }
}
