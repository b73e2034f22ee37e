import { failure, type Result, success, unreachable } from '../core/base';
import { type NoAnswer, PATIENCE, type WatchedWorker, watchWorker } from '../workers';
import type { RenderAnswer, RenderJob } from './messages';
import { startWorker } from './start-worker';

const NOT_COMPUTED =
  'The sound could not be computed. Close other pages that need much memory, then press Play again.';
const NO_WORKER =
  'This browser did not let the page compute its sound. Reload the page and press Play again.';
const SILENT =
  'The part of the page that computes the sound no longer answered, so it was ended and the lesson is as it was. Try again: it starts afresh.';

/** A job that was cancelled gives null. */
export type RenderResult = Result<RenderAnswer | null, string>;

/** Computes sound beside the page, one job after the other. */
export interface Renderer {
  /** Starts the worker, so that it is there when the first job comes. */
  warm(): void;
  render(job: RenderJob): Promise<RenderResult>;
  /** Ends whatever is being computed or waits; its promises give null. */
  cancel(): void;
  /** Cancels, and gives the worker back. */
  dispose(): void;
}

/**
 * Seconds without a sign of life that a job is given. Besides, a sound is given as long as it lasts: a machine that
 * needs longer to compute it could not play it either.
 */
function patienceFor(job: RenderJob): number {
  const { performance } = job.kind === 'wav' ? job : job.request;
  const round = ((performance.end / performance.beat) * 60) / performance.tempo;
  return PATIENCE + round * (job.kind === 'wav' ? job.rounds : 1);
}

function withoutAnswer(why: NoAnswer): RenderResult {
  switch (why) {
    case 'called off':
      return success(null);
    case 'failed':
      return failure(NO_WORKER);
    case 'silent':
      return failure(SILENT);
    default:
      return unreachable(why);
  }
}

/** The worker starts with the first job, and again with the first job after a cancelled one. */
export function createRenderer(
  worker: WatchedWorker<RenderJob, RenderAnswer> = watchWorker(startWorker),
): Renderer {
  return {
    warm: worker.warm,
    render: async (job) => {
      const answer = await worker.ask(job, { patience: patienceFor(job) });
      if (!answer.ok) return withoutAnswer(answer.problem);
      return answer.value.kind === 'failed' ? failure(NOT_COMPUTED) : success(answer.value);
    },
    cancel: worker.cancel,
    dispose: worker.dispose,
  };
}
