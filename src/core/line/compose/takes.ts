import { type LineNote, midiOf, type Steps } from '../../base';
import type { ComposedLine, ComposeRequest, LineNotes } from '../types';
import { composeLine } from './compose';

/** A composed line with the seed that brings it back. */
export interface Take extends ComposedLine {
  readonly seed: number;
}

/** Seeds that are tried for a line that is different enough. */
const TRIES = 24;
/** Share of the free bars that has to change: one bar that goes otherwise is no other line. */
const CHANGED = 0.25;

const textOf = (notes: readonly LineNote[]): string =>
  notes.map((note) => `${note.start} ${note.duration} ${midiOf(note.pitch)}`).join(', ');

/** Whether a take changes at least a quarter of the free bars. */
export function isAnotherTake(before: LineNotes, after: LineNotes, kept: ComposeRequest['kept']): boolean {
  const free = after.map((_, index) => index).filter((index) => (kept[index] ?? null) === null);
  const changed = free.filter((index) => textOf(before[index] ?? []) !== textOf(after[index] ?? [])).length;
  return changed > 0 && changed >= CHANGED * free.length;
}

/**
 * The next take after a line: from the seed after the request's on, the first that changes at least a quarter of the
 * bars that are not kept. Where there is none, the line comes back with a remark that says so.
 */
export function anotherTake(request: ComposeRequest, before: LineNotes): Take {
  for (let step = 1; step <= TRIES; step += 1) {
    const seed = request.seed + step;
    const line = composeLine({ ...request, seed });
    if (isAnotherTake(before, line.bars, request.kept)) return { ...line, seed };
  }
  const line = composeLine(request);
  return {
    ...line,
    seed: request.seed,
    remarks: [...line.remarks, 'There is no other line for this chart, level and these kept bars.'],
  };
}

/** Several takes, one a step, the best under the composer's score first; each comes back from its seed. */
export function* rankedTakes(request: ComposeRequest, count: number): Steps<readonly Take[]> {
  const takes: Take[] = [];
  for (let index = 0; index < count; index += 1) {
    const seed = request.seed + index;
    takes.push({ ...composeLine({ ...request, seed }), seed });
    yield;
  }
  return takes.sort((one, other) => one.cost - other.cost || one.seed - other.seed);
}
