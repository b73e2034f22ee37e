import { useEffect, useState } from 'react';
import type { Result } from '../../../core/base';

/** An answer, and what it is about. */
interface Answered<Question, Answer, Problem> {
  readonly of: Question;
  /** Null where there was none to be had. */
  readonly answer: Answer | null;
  /** Why there is none; null where there is one. */
  readonly problem: Problem | null;
}

/**
 * Follows a question that changes with its answers: it is asked when it has not changed for `rest` milliseconds, and
 * not before the one that was asked last is answered, so that a slow answerer does not fall behind.
 * @param ask - the same function as long as it answers the same
 * @returns the last answer, which may be about an older question; null before there is one
 */
export function useAnswer<Question, Answer, Problem>(
  question: Question,
  ask: (question: Question) => Promise<Result<Answer, Problem>>,
  rest: number,
): Answered<Question, Answer, Problem> | null {
  const [known, setKnown] = useState<Answered<Question, Answer, Problem> | null>(null);
  const [asking, setAsking] = useState(false);
  useEffect(() => {
    if (asking || known?.of === question) return;
    const timer = setTimeout(async () => {
      setAsking(true);
      const answer = await ask(question);
      setKnown({
        of: question,
        answer: answer.ok ? answer.value : null,
        problem: answer.ok ? null : answer.problem,
      });
      setAsking(false);
    }, rest);
    return () => clearTimeout(timer);
  }, [asking, known, question, ask, rest]);
  return known;
}
