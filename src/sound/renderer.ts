import { failure, type Result, success } from '../core/base';
import type { RenderAnswer, RenderCall, RenderJob, RenderReply } from './messages';
import { startWorker } from './start-worker';

const NOT_COMPUTED =
  'The sound could not be computed. Close other pages that need much memory, then press Play again.';
const NO_WORKER =
  'This browser did not let the page compute its sound. Reload the page and press Play again.';

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

/** The worker starts with the first job, and again with the first job after a cancelled one. */
export function createRenderer(): Renderer {
  let worker: Worker | null = null;
  let lastId = 0;
  const waiting = new Map<number, (result: RenderResult) => void>();

  const settleAll = (result: RenderResult): void => {
    const settles = [...waiting.values()];
    waiting.clear();
    for (const settle of settles) {
      settle(result);
    }
  };

  const end = (): void => {
    worker?.terminate();
    worker = null;
  };

  const start = (): Worker => {
    const started = startWorker();
    started.addEventListener('message', ({ data }: MessageEvent<RenderReply>) => {
      const settle = waiting.get(data.id);
      waiting.delete(data.id);
      settle?.(data.answer.kind === 'failed' ? failure(NOT_COMPUTED) : success(data.answer));
    });
    started.addEventListener('error', () => {
      end();
      settleAll(failure(NO_WORKER));
    });
    return started;
  };

  return {
    warm: () => {
      try {
        worker ??= start();
      } catch {
        // The job that needs it says so.
      }
    },
    render: (job) =>
      new Promise((resolve) => {
        try {
          worker ??= start();
          lastId += 1;
          waiting.set(lastId, resolve);
          const call: RenderCall = { id: lastId, job };
          worker.postMessage(call);
        } catch {
          waiting.delete(lastId);
          resolve(failure(NO_WORKER));
        }
      }),
    cancel: () => {
      if (waiting.size > 0) {
        end();
        settleAll(success(null));
      }
    },
    dispose: () => {
      end();
      settleAll(success(null));
    },
  };
}
