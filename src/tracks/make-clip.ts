import { failure, type Result, success } from '../core/base';
import { watchWorker } from '../workers';
import type { ClipAnswer, ClipJob } from './clip-messages';
import type { MakeOptions } from './make';

const NOT_MADE =
  'The clip could not be made. Close other pages that need much memory, or take fewer bars, then try again.';

/** Seconds without a sign of life that a slow machine may take for ten pictures, or for levelling a long sound. */
const PATIENCE = 120;

/**
 * Makes a clip in a worker of its own; null where it was called off. The film's pictures are given away. It never throws: a
 * fault is a sentence.
 */
export async function makeClip(
  job: ClipJob,
  { signal, onShare }: MakeOptions,
): Promise<Result<NonNullable<ClipAnswer> | null, string>> {
  const worker = watchWorker<ClipJob, ClipAnswer>(
    () => new Worker(new URL('./clip-worker.ts', import.meta.url), { type: 'module' }),
  );
  const stop = (): void => worker.dispose();
  signal.addEventListener('abort', stop);
  try {
    if (signal.aborted) return success(null);
    const answer = await worker.ask(job, { patience: PATIENCE, onShare });
    if (!answer.ok) return answer.problem === 'called off' ? success(null) : failure(NOT_MADE);
    return answer.value === null ? failure(NOT_MADE) : success(answer.value);
  } finally {
    signal.removeEventListener('abort', stop);
    worker.dispose();
  }
}
