import { failure, type Result, success } from '../../core/base';
import type { Wishes } from '../../core/exchange';
import { type NoAnswer, watchWorker } from '../../workers';
import type { LessonRead, MusicRead, PictureRead, ReadingAnswer, ReadingJob } from './messages';

/** Reads files beside the page, which never waits for it. One file at a time: another one calls the first off. */
export interface FileReader {
  /** @param onShare - hears how much of it is read, from 0 to 1 */
  readMusic(
    bytes: Uint8Array,
    title: string,
    wishes: Wishes | null,
    onShare?: (share: number) => void,
  ): Promise<Result<MusicRead, NoAnswer>>;
  readLesson(bytes: Uint8Array): Promise<Result<LessonRead, NoAnswer>>;
  /** @param size - in whole pixels, to which it is made smaller */
  readPicture(
    file: Blob,
    size: { readonly width: number; readonly height: number },
  ): Promise<Result<PictureRead, NoAnswer>>;
  /** Ends what is being read; it is called off. */
  stop(): void;
}

/** Seconds that a file is given; the largest that is read takes a few. */
const PATIENCE = 120;

const startWorker = (): Worker =>
  new Worker(new URL('./reading-worker.ts', import.meta.url), { type: 'module' });

/** A reader whose worker starts with the first file. */
export function createFileReader(): FileReader {
  const worker = watchWorker<ReadingJob, ReadingAnswer>(startWorker);
  const ask = (job: ReadingJob, onShare?: (share: number) => void) => {
    worker.cancel();
    return worker.ask(job, { patience: PATIENCE, onShare });
  };
  return {
    async readMusic(bytes, title, wishes, onShare) {
      const answer = await ask({ kind: 'music', bytes, title, wishes }, onShare);
      if (!answer.ok) return answer;
      return answer.value.kind === 'music' ? success(answer.value.read) : failure('failed');
    },
    async readLesson(bytes) {
      const answer = await ask({ kind: 'lesson', bytes });
      if (!answer.ok) return answer;
      return answer.value.kind === 'lesson' ? success(answer.value.read) : failure('failed');
    },
    async readPicture(file, { width, height }) {
      const answer = await ask({ kind: 'picture', file, width, height });
      if (!answer.ok) return answer;
      return answer.value.kind === 'picture' ? success(answer.value.read) : failure('failed');
    },
    stop: () => worker.cancel(),
  };
}
