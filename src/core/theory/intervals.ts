import { halfStepsAboveC, type SpelledName, type SpelledPitch, staffStepOf } from '../base';
import { halfStepsOf, inOctaveZero, nameOnly, spellOnStep, stepOfName } from './names';
import type { Interval } from './types';

/**
 * The pitch an interval away, spelled on the interval's staff step: a minor third above A is C, never B♯.
 * Beyond double flats and sharps the nearest letter that can write it is taken.
 */
export const transposePitch = (pitch: SpelledPitch, interval: Interval): SpelledPitch =>
  spellOnStep(staffStepOf(pitch) + interval.steps, halfStepsOf(pitch) + interval.halfSteps);

/** As {@link transposePitch}, for a name without an octave. */
export const transposeName = (name: SpelledName, interval: Interval): SpelledName =>
  nameOnly(transposePitch(inOctaveZero(name), interval));

/** From one pitch to another; negative when the other lies below. */
export const intervalBetweenPitches = (from: SpelledPitch, to: SpelledPitch): Interval => ({
  steps: staffStepOf(to) - staffStepOf(from),
  halfSteps: halfStepsOf(to) - halfStepsOf(from),
});

/** From one name up to the next occurrence of another: 0 to 6 steps. A name to itself is a unison. */
export function intervalBetween(from: SpelledName, to: SpelledName): Interval {
  const octaveUp = stepOfName(to) < stepOfName(from);
  return {
    steps: stepOfName(to) - stepOfName(from) + (octaveUp ? 7 : 0),
    halfSteps: halfStepsAboveC(to) - halfStepsAboveC(from) + (octaveUp ? 12 : 0),
  };
}

/** The same distance the other way; transposing by it undoes the interval. */
export const invertDirection = (interval: Interval): Interval => ({
  steps: 0 - interval.steps,
  halfSteps: 0 - interval.halfSteps,
});
