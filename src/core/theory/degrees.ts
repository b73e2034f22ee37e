import type { SpelledName } from '../base';
import { intervalBetween, transposeName } from './intervals';
import { alterationOrNull, formatAlteration } from './names';
import type { Degree, Interval } from './types';

const STEPS: readonly Degree['step'][] = [1, 2, 3, 4, 5, 6, 7];
/** Half steps of the major scale above its root. */
const MAJOR_SCALE: Readonly<Record<Degree['step'], number>> = { 1: 0, 2: 2, 3: 4, 4: 5, 5: 7, 6: 9, 7: 11 };

/** The step `steps` scale steps above the root, folded into one octave: 8 steps up is step 2. */
export const foldedStep = (steps: number): Degree['step'] => STEPS[((steps % 7) + 7) % 7] ?? 1;

/** Half steps above the root; −1 for ♭1, 12 for a ♯7. */
const halfStepsOfDegree = (degree: Degree): number => MAJOR_SCALE[degree.step] + degree.alteration;

/** From the root up to the degree. */
export const intervalOfDegree = (degree: Degree): Interval => ({
  steps: degree.step - 1,
  halfSteps: halfStepsOfDegree(degree),
});

/** The note that stands on a degree above a root: the ♭7 of C is B♭. */
export const nameOfDegree = (root: SpelledName, degree: Degree): SpelledName =>
  transposeName(root, intervalOfDegree(degree));

/** The difference to the nearer octave, −6 to 5 half steps. */
const withinOctave = (halfSteps: number): number => ((((halfSteps + 6) % 12) + 12) % 12) - 6;

/**
 * The place of a name above a root, by its spelling: E♭ above C is ♭3, D♯ is ♯2. A spelling more than a double
 * alteration away from the major scale counts as the nearest letter that is not.
 */
export function degreeOf(name: SpelledName, root: SpelledName): Degree {
  const { steps, halfSteps } = intervalBetween(root, name);
  for (const shift of [0, 1, -1, 2, -2]) {
    const step = foldedStep(steps + shift);
    const alteration = alterationOrNull(withinOctave(halfSteps - MAJOR_SCALE[step]));
    if (alteration !== null) return { step, alteration };
  }
  return { step: 1, alteration: 0 };
}

/** No one counts a ♭1: a root written with another sign is called by the degree that sounds the same. */
const ON_THE_ROOT: Readonly<Record<Degree['alteration'], string>> = {
  [-2]: '♭7',
  [-1]: '7',
  0: 'R',
  1: '♭2',
  2: '2',
};

/** As written on the sheet: `R`, `♭3`, `♯4`, `♭♭7`. */
export const formatDegree = ({ step, alteration }: Degree): string =>
  step === 1 ? ON_THE_ROOT[alteration] : formatAlteration(alteration) + step;

export const sameDegree = (one: Degree, other: Degree): boolean =>
  one.step === other.step && one.alteration === other.alteration;
