import { failure, type Result, success, unreachable } from '../core/base';
import { type NoAnswer, PATIENCE, type WatchedWorker, watchWorker } from '../workers';
import type { RenderAnswer, RenderJob, SentJob } from './messages';
import { createSender } from './sending';
import { startWorker } from './start-worker';
import { buffersOf } from './synthesis/segment';
import type { Stems } from './synthesis/stems';

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
  /** Gives the memory of what was computed back to be used again; nothing of it can be read afterwards. */
  giveBack(...all: readonly (Stems | null)[]): void;
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
  const { performance } = job.kind === 'wav' || job.kind === 'place' ? job : job.request;
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
  worker: WatchedWorker<SentJob, RenderAnswer> = watchWorker(startWorker),
): Renderer {
  const sender = createSender();
  const ask = (job: RenderJob) => worker.ask(sender.pack(job), { patience: patienceFor(job) });
  return {
    warm: worker.warm,
    render: async (job) => {
      let answer = await ask(job);
      if (answer.ok && answer.value.kind === 'unknown') {
        sender.forget();
        answer = await ask(job);
      }
      if (!answer.ok) return withoutAnswer(answer.problem);
      return answer.value.kind === 'failed' ? failure(NOT_COMPUTED) : success(answer.value);
    },
    giveBack: (...all) => worker.giveBack(buffersOf(...all)),
    cancel: worker.cancel,
    dispose: worker.dispose,
  };
}
