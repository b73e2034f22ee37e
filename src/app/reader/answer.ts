import { loadReader } from '../../core/exchange';
import { parseLesson } from '../../core/lesson';
import type { ReadingAnswer, ReadingJob } from './messages';

/** Reads a file; what reads music is fetched when such a file comes. */
export async function answerReading(job: ReadingJob): Promise<ReadingAnswer> {
  if (job.kind === 'lesson')
    return { kind: 'lesson', read: parseLesson(new TextDecoder().decode(job.bytes)) };
  const { readFile } = await loadReader();
  return { kind: 'music', read: readFile(job.bytes, job.title, job.part) };
}
