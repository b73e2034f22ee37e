import { type Bpm, bpm } from '../base';

/** A rung of a tempo ladder: so many rounds at a tempo before the next one. */
export interface Rung {
  readonly tempo: Bpm;
  readonly rounds: number;
}

/** Rounds on a rung: three right repetitions before going faster (studygeniuspro.com, a weak source). */
const ROUNDS = 3;

/** A rung is at least this many beats a minute above the one below it (the same source). */
const LEAST_STEP = 5;

/** The ladder has about this many steps: from half the tempo, a tenth of the tempo at a time. */
const STEPS = 5;

/**
 * A tempo ladder to begin with, for the teacher to edit: from half the tempo up to the tempo itself, in whole
 * beats a minute, the last rung last.
 */
export function proposeLadder(tempo: Bpm): readonly Rung[] {
  const top = Math.max(1, Math.round(tempo));
  const bottom = Math.max(1, Math.round(top / 2));
  const step = Math.max(LEAST_STEP, Math.ceil((top - bottom) / STEPS));
  const rungs: Rung[] = [];
  for (let rung = bottom; rung < top; rung += step) {
    rungs.push({ tempo: bpm(rung), rounds: ROUNDS });
  }
  return [...rungs, { tempo: bpm(top), rounds: ROUNDS }];
}
