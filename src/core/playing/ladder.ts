import { type Bpm, bpm } from '../base';
import type { Rung } from '../lesson';

/** Rounds on a rung: three right repetitions before going faster (studygeniuspro.com, a weak source). */
const ROUNDS = 3;

/** Shares of the full tempo; the ladder starts at half of it (the same source). */
const SHARES = [0.5, 0.625, 0.75, 0.875, 1] as const;

/**
 * A tempo ladder to begin with, for the teacher to edit: from half the tempo up to the tempo itself, in whole
 * beats a minute.
 */
export function proposeLadder(tempo: Bpm): readonly Rung[] {
  const tempos = new Set(SHARES.map((share) => Math.max(1, Math.round(tempo * share))));
  return [...tempos].map((rung) => ({ tempo: bpm(rung), rounds: ROUNDS }));
}

/** Rungs between the first and the last one of a ladder that begins where something went wrong. */
const RUNGS_BETWEEN = 3;

/** A ladder from a slow tempo up to another one, in even steps and whole beats a minute. */
export function ladderFrom(slow: Bpm, tempo: Bpm): readonly Rung[] {
  const step = (tempo - slow) / (RUNGS_BETWEEN + 1);
  const tempos = new Set(
    Array.from({ length: RUNGS_BETWEEN + 2 }, (_, index) => Math.max(1, Math.round(slow + index * step))),
  );
  return [...tempos].map((rung) => ({ tempo: bpm(rung), rounds: ROUNDS }));
}
