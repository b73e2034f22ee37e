import { failure, type Result, success } from '../core/base';
import { watchWorker } from '../workers';

export interface MakeOptions {
  readonly signal: AbortSignal;
  /** Hears how much of it is done, from 0 to 1. */
  readonly onShare: (share: number) => void;
}

/** Seconds without a sign of life that a slow machine may take for levelling a long sound, or for ten pictures of a clip. */
const PATIENCE = 120;

/**
 * Has jobs done one after the other by a worker of their own, which ends with them; null where they were called off, and
 * then what was finished is lost. It never throws.
 * @param notMade - the sentence for a fault
 */
export async function makeEach<Job, Made>(
  start: () => Worker,
  jobs: readonly Job[],
  notMade: string,
  { signal, onShare }: MakeOptions,
): Promise<Result<readonly Made[] | null, string>> {
  const worker = watchWorker<Job, Made | null>(start);
  const stop = (): void => worker.dispose();
  signal.addEventListener('abort', stop);
  try {
    const made: Made[] = [];
    for (const [index, job] of jobs.entries()) {
      if (signal.aborted) return success(null);
      const answer = await worker.ask(job, {
        patience: PATIENCE,
        onShare: (share) => onShare((index + share) / jobs.length),
      });
      if (!answer.ok) return answer.problem === 'called off' ? success(null) : failure(notMade);
      if (answer.value === null) return failure(notMade);
      made.push(answer.value);
    }
    return success(made);
  } finally {
    signal.removeEventListener('abort', stop);
    worker.dispose();
  }
}
