import { failure, type Result, success } from '../../core/base';
import type { Composition, KeyChoice, KeyHand, PieceRegrade } from '../../core/composing';
import type { Lesson } from '../../core/lesson';
import type { Level } from '../../core/line';
import { type NoAnswer, watchWorker } from '../../workers';
import type {
  CheckedFinding,
  ComparedTake,
  ComposerAnswer,
  ComposerJob,
  Deed,
  FoundRepair,
} from './messages';

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
  /** What is to be pointed out after a change of a bar (index from 0) that was not before it, the bar's own first. */
  brought(
    before: Lesson,
    after: Lesson,
    pieceId: string,
    bar: number,
  ): Promise<Result<readonly string[], NoAnswer>>;
  /** Looks for a repair of a finding, by its place in the list of the check that was asked last; null where there is none. */
  repair(finding: number): Promise<Result<FoundRepair | null, NoAnswer>>;
  /** What the line of a piece teaches and what to listen for. */
  explain(lesson: Lesson, pieceId: string): Promise<Result<readonly string[], NoAnswer>>;
  /** The takes of a piece, the best first, each with what sets it apart. */
  rankTakes(lesson: Lesson, pieceId: string): Promise<Result<readonly ComparedTake[], NoAnswer>>;
  /** The line of a piece as another level has it; null where there is no line. */
  regrade(lesson: Lesson, pieceId: string, level: Level): Promise<Result<PieceRegrade | null, NoAnswer>>;
  /** The keys that a line can go to, the easiest for the hand first. */
  keysFor(lesson: Lesson, pieceId: string, how: KeyHand): Promise<Result<readonly KeyChoice[], NoAnswer>>;
}

const startWorker = (): Worker =>
  new Worker(new URL('./composing-worker.ts', import.meta.url), { type: 'module' });

/** A composer whose worker starts with the first question. */
export function createComposer(): Composer {
  const worker = watchWorker<ComposerJob, ComposerAnswer>(startWorker);

  /** Asks, and takes out of the answer what was asked for. */
  const ask = async <Value>(
    job: ComposerJob,
    take: (answer: ComposerAnswer) => Value | undefined,
    signal?: AbortSignal,
  ): Promise<Result<Value, NoAnswer>> => {
    const answer = await worker.ask(job, { signal });
    if (!answer.ok) return answer;
    const value = take(answer.value);
    if (value !== undefined) return success(value);
    return failure(answer.value.kind === 'called off' ? 'called off' : 'failed');
  };

  return {
    compose: (deed, lesson, pieceId, signal) =>
      ask(
        { kind: 'compose', deed, lesson, pieceId },
        (answer) => (answer.kind === 'composition' ? answer.composition : undefined),
        signal,
      ),
    check: (lesson) =>
      ask({ kind: 'check', lesson }, (answer) => (answer.kind === 'findings' ? answer.findings : undefined)),
    brought: (before, after, pieceId, bar) =>
      ask({ kind: 'brought', before, after, pieceId, bar }, (answer) =>
        answer.kind === 'brought' ? answer.messages : undefined,
      ),
    repair: (finding) =>
      ask({ kind: 'repair', finding }, (answer) => (answer.kind === 'repair' ? answer.repair : undefined)),
    explain: (lesson, pieceId) =>
      ask({ kind: 'explain', lesson, pieceId }, (answer) =>
        answer.kind === 'explanation' ? answer.sentences : undefined,
      ),
    rankTakes: (lesson, pieceId) =>
      ask({ kind: 'rank takes', lesson, pieceId }, (answer) =>
        answer.kind === 'ranking' ? answer.takes : undefined,
      ),
    regrade: (lesson, pieceId, level) =>
      ask({ kind: 'regrade', lesson, pieceId, level }, (answer) =>
        answer.kind === 'regraded' ? answer.regrade : undefined,
      ),
    keysFor: (lesson, pieceId, how) =>
      ask({ kind: 'keys', lesson, pieceId, how }, (answer) =>
        answer.kind === 'keys' ? answer.keys : undefined,
      ),
  };
}
