import { failure, type Result, success } from '../core/base';
import { watchWorker } from '../workers';
import type { TrackAnswer, TrackJob } from './messages';

const NOT_MADE =
  'The track could not be made. Close other pages that need much memory, or make fewer rounds at once, then try again.';

/** Seconds without a sign of life that levelling a long track may take. */
const PATIENCE = 120;

export interface MakeOptions {
  readonly signal: AbortSignal;
  /** Hears how much of it is done, from 0 to 1. */
  readonly onShare: (share: number) => void;
}

/** A finished track. */
export type Track = NonNullable<TrackAnswer>;

/**
 * Makes tracks one after the other, in a worker of their own; null where it was called off, and then those that were
 * finished are lost. It never throws: a fault is a sentence.
 */
export async function makeTracks(
  jobs: readonly TrackJob[],
  { signal, onShare }: MakeOptions,
): Promise<Result<readonly Track[] | null, string>> {
  const worker = watchWorker<TrackJob, TrackAnswer>(
    () => new Worker(new URL('./track-worker.ts', import.meta.url), { type: 'module' }),
  );
  const stop = (): void => worker.dispose();
  signal.addEventListener('abort', stop);
  try {
    const tracks: Track[] = [];
    for (const [index, job] of jobs.entries()) {
      if (signal.aborted) return success(null);
      const answer = await worker.ask(job, {
        patience: PATIENCE,
        onShare: (share) => onShare((index + share) / jobs.length),
      });
      if (!answer.ok) return answer.problem === 'called off' ? success(null) : failure(NOT_MADE);
      if (answer.value === null) return failure(NOT_MADE);
      tracks.push(answer.value);
    }
    return success(tracks);
  } finally {
    signal.removeEventListener('abort', stop);
    worker.dispose();
  }
}
