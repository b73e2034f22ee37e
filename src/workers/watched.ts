import { failure, type Result, success } from '../core/base';
import type { GivenBack, WorkerCall, WorkerReply } from './messages';

/**
 * Why a question has no answer: it was called off; the worker could not be started or died; or it gave no sign of
 * life for so long that it was ended.
 */
export type NoAnswer = 'called off' | 'failed' | 'silent';

/** Seconds without a sign of life after which a worker is taken for dead; many times what the longest work takes. */
export const PATIENCE = 30;

/** The parts of a browser's worker that asking it takes. */
interface WorkerLike {
  postMessage(message: unknown, transfer?: Transferable[]): void;
  terminate(): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
  addEventListener(type: 'error' | 'messageerror', listener: () => void): void;
}

/** Calls back once a second until the returned function is called. */
export type EverySecond = (beat: () => void) => () => void;

const everySecond: EverySecond = (beat) => {
  const timer = setInterval(beat, 1000);
  return () => clearInterval(timer);
};

export interface AskOptions {
  /** Tells the worker that nobody waits any more; it answers when it has heard it. */
  readonly signal?: AbortSignal | undefined;
  /** Seconds without a sign of life that this question is given; {@link PATIENCE} when left out. */
  readonly patience?: number;
  /** Hears how much is done, from 0 to 1, where the worker says so. */
  readonly onShare?: ((share: number) => void) | undefined;
}

interface Question<Job, Answer> {
  readonly id: number;
  readonly job: Job;
  readonly patience: number;
  readonly onShare: AskOptions['onShare'];
  readonly settle: (result: Result<Answer, NoAnswer>) => void;
}

/** A worker that is asked one thing after the other, and is never waited for without an end. */
export interface WatchedWorker<Job, Answer> {
  /** Starts the worker, so that it is there when it is asked. */
  warm(): void;
  ask(job: Job, options?: AskOptions): Promise<Result<Answer, NoAnswer>>;
  /** Gives memory back that came with an answer and is read no more; it is gone here. */
  giveBack(buffers: ArrayBuffer[]): void;
  /** Ends whatever is being done or waits; those questions are called off. */
  cancel(): void;
  /** Cancels, and gives the worker back; the next question starts another. */
  dispose(): void;
}

/**
 * Asks a worker, which starts with the first question. One that gives no sign of life is ended: the question it was
 * at has no answer then, those behind it are asked again of a fresh one, and
 * when that is silent as well, none of them has one. Seconds are counted while the page itself is
 * awake, so that a computer that was asleep makes no worker seem dead.
 * @param start - starts the worker; what it throws means that there is none
 */
export function watchWorker<Job, Answer>(
  start: () => WorkerLike,
  everySecondOf: EverySecond = everySecond,
): WatchedWorker<Job, Answer> {
  let worker: WorkerLike | null = null;
  let lastId = 0;
  let silentFor = 0;
  /** Whether the last worker was ended for its silence, and this one has not given a sign of life yet. */
  let silentBefore = false;
  let endWatch: (() => void) | null = null;
  /** In the order they were asked. */
  const waiting = new Map<number, Question<Job, Answer>>();

  const rest = (): void => {
    endWatch?.();
    endWatch = null;
  };

  const end = (): void => {
    worker?.terminate();
    worker = null;
    rest();
  };

  const settleAll = (result: Result<Answer, NoAnswer>): void => {
    const questions = [...waiting.values()];
    waiting.clear();
    for (const { settle } of questions) settle(result);
  };

  const fail = (): void => {
    end();
    settleAll(failure('failed'));
  };

  const hear = ({ data }: MessageEvent<WorkerReply<Answer>>): void => {
    silentFor = 0;
    silentBefore = false;
    const question = waiting.get(data.id);
    if (!('answer' in data)) {
      if (data.share !== undefined) question?.onShare?.(data.share);
      return;
    }
    waiting.delete(data.id);
    if (waiting.size === 0) rest();
    question?.settle(success(data.answer));
  };

  const started = (): WorkerLike => {
    const fresh = start();
    // A worker that was ended may still have something on its way, which must not end the next one.
    const onFault = (): void => {
      if (worker === fresh) fail();
    };
    fresh.addEventListener('message', (event) => {
      if (worker === fresh) hear(event);
    });
    // It could not be fetched, or it died.
    fresh.addEventListener('error', onFault);
    fresh.addEventListener('messageerror', onFault);
    return fresh;
  };

  const post = (call: WorkerCall<Job>): void => worker?.postMessage(call);

  /** @throws the browser's error where it lets the page start no worker, or cannot send the job. */
  const send = ({ id, job }: Question<Job, Answer>): void => {
    worker ??= started();
    post({ id, job });
    endWatch ??= everySecondOf(count);
  };

  const count = (): void => {
    const [first] = waiting.values();
    silentFor += 1;
    if (first === undefined || silentFor < first.patience) return;
    end();
    silentFor = 0;
    if (silentBefore) {
      silentBefore = false;
      settleAll(failure('silent'));
      return;
    }
    silentBefore = true;
    waiting.delete(first.id);
    try {
      for (const question of waiting.values()) send(question);
    } catch {
      fail();
    }
    first.settle(failure('silent'));
  };

  return {
    warm: () => {
      try {
        worker ??= started();
      } catch {
        // The question that needs it says so.
      }
    },
    ask: (job, { signal, patience = PATIENCE, onShare } = {}) =>
      new Promise((settle) => {
        lastId += 1;
        const question = { id: lastId, job, patience, onShare, settle };
        if (waiting.size === 0) silentFor = 0;
        waiting.set(question.id, question);
        try {
          send(question);
        } catch {
          waiting.delete(question.id);
          if (waiting.size === 0) rest();
          settle(failure('failed'));
          return;
        }
        signal?.addEventListener('abort', () => {
          if (waiting.has(question.id)) post({ id: question.id, calledOff: true });
        });
      }),
    giveBack: (buffers) => {
      const back: GivenBack = { givenBack: buffers };
      worker?.postMessage(back, buffers);
    },
    cancel: () => {
      if (waiting.size === 0) return;
      end();
      settleAll(failure('called off'));
    },
    dispose: () => {
      end();
      settleAll(failure('called off'));
    },
  };
}
