import { failure, type Result, success } from '../../core/base';
import type { Composition } from '../../core/composing';
import type { Lesson } from '../../core/lesson';
import type {
  CheckedFinding,
  ComparedTake,
  ComposerAnswer,
  ComposerCall,
  ComposerJob,
  ComposerReply,
  Deed,
  FoundRepair,
} from './messages';

/** Why there is no answer. */
export type NoAnswer = 'called off' | 'failed';

/** Composes and checks beside the page, which never waits for it. Every answer is about the lesson it was asked with. */
export interface Composer {
  compose(
    deed: Deed,
    lesson: Lesson,
    pieceId: string,
    signal: AbortSignal,
  ): Promise<Result<Composition, NoAnswer>>;
  /** What is to be pointed out about a lesson. */
  check(lesson: Lesson): Promise<Result<readonly CheckedFinding[], NoAnswer>>;
  /** Looks for a repair of a finding, by its place in the list of the check that was asked last; null where there is none. */
  repair(finding: number): Promise<Result<FoundRepair | null, NoAnswer>>;
  /** What the line of a piece teaches and what to listen for. */
  explain(lesson: Lesson, pieceId: string): Promise<Result<readonly string[], NoAnswer>>;
  /** The takes of a piece, the best first, each with what sets it apart. */
  rankTakes(lesson: Lesson, pieceId: string): Promise<Result<readonly ComparedTake[], NoAnswer>>;
}

/** A composer whose worker starts with the first question. */
export function createComposer(): Composer {
  let worker: Worker | null = null;
  let lastId = 0;
  const waiting = new Map<number, (answer: ComposerAnswer) => void>();

  const end = (): void => {
    worker?.terminate();
    worker = null;
    const settles = [...waiting.values()];
    waiting.clear();
    for (const settle of settles) settle({ kind: 'failed' });
  };

  const start = (): Worker => {
    const started = new Worker(new URL('./composing-worker.ts', import.meta.url), { type: 'module' });
    started.addEventListener('message', ({ data: { id, answer } }: MessageEvent<ComposerReply>) => {
      const settle = waiting.get(id);
      waiting.delete(id);
      settle?.(answer);
    });
    // It could not be fetched, or the browser lets the page start none.
    started.addEventListener('error', end);
    return started;
  };

  const ask = (job: ComposerJob, signal?: AbortSignal): Promise<ComposerAnswer> =>
    new Promise((resolve) => {
      lastId += 1;
      const id = lastId;
      const post = (call: ComposerCall) => worker?.postMessage(call);
      try {
        worker ??= start();
        waiting.set(id, resolve);
        post({ id, job });
        signal?.addEventListener('abort', () => {
          if (waiting.has(id)) post({ id, job: 'called off' });
        });
      } catch {
        waiting.delete(id);
        resolve({ kind: 'failed' });
      }
    });

  return {
    compose: async (deed, lesson, pieceId, signal) => {
      const answer = await ask({ kind: 'compose', deed, lesson, pieceId }, signal);
      return answer.kind === 'composition' ? success(answer.composition) : withoutAnswer(answer);
    },
    check: async (lesson) => {
      const answer = await ask({ kind: 'check', lesson });
      return answer.kind === 'findings' ? success(answer.findings) : withoutAnswer(answer);
    },
    repair: async (finding) => {
      const answer = await ask({ kind: 'repair', finding });
      return answer.kind === 'repair' ? success(answer.repair) : withoutAnswer(answer);
    },
    explain: async (lesson, pieceId) => {
      const answer = await ask({ kind: 'explain', lesson, pieceId });
      return answer.kind === 'explanation' ? success(answer.sentences) : withoutAnswer(answer);
    },
    rankTakes: async (lesson, pieceId) => {
      const answer = await ask({ kind: 'rank takes', lesson, pieceId });
      return answer.kind === 'ranking' ? success(answer.takes) : withoutAnswer(answer);
    },
  };
}

const withoutAnswer = ({ kind }: ComposerAnswer): Result<never, NoAnswer> =>
  failure(kind === 'called off' ? kind : 'failed');
