import type { Demands } from './demands';
import type { Stretch } from './harmony';
import type { DegreeStep } from './types';

/** Every step, the root first. */
export const DEGREE_STEPS: readonly DegreeStep[] = [1, 2, 3, 4, 5, 6, 7];

/** Whether a note so many half steps above its chord's root is one of the degrees that an aim keeps a bar to. */
export function isAmongDegrees({ degrees }: Demands, stretch: Stretch, interval: number): boolean {
  if (degrees === null || !stretch.chord) return true;
  const at = (list: Stretch['steps']) => list.findIndex((step) => step?.halfSteps === interval) + 1;
  const isHome = (stretch.rootClass + interval) % 12 === stretch.homeClass;
  return degrees.has(at(stretch.steps) || at(stretch.keySteps)) || (isHome && degrees.has(1));
}
