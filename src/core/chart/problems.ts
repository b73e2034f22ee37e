import type { ChartProblem } from './types';

/** More problems than this help no one; the rest is not listed. */
const MOST_PROBLEMS = 200;

/** Collects the problems of a chart while it is read. */
export class ProblemList {
  private readonly problems: ChartProblem[] = [];
  private readonly said = new Set<string>();

  push(problem: ChartProblem): void {
    if (this.problems.length < MOST_PROBLEMS) this.problems.push(problem);
  }

  /** Says once in a chart what holds wherever it is found again. */
  once(what: string, problem: ChartProblem): void {
    if (this.said.has(what)) return;
    this.said.add(what);
    this.push(problem);
  }

  /** In the order of the text. */
  inOrder(): readonly ChartProblem[] {
    return [...this.problems].sort((one, other) => one.line - other.line || one.column - other.column);
  }
}
