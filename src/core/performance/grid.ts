import { barTicks, type Metre } from '../base';
import type { Grid } from '../feel';

/** A hit of a grid in straight ticks from the beginning of its bar. */
export interface GridHit {
  readonly start: number;
  /** Up to the next hit or silence. */
  readonly duration: number;
  readonly accent: boolean;
  readonly open: boolean;
}

/** Reads a rhythm text whose steps share the bar evenly. */
export function readGrid(grid: Grid, metre: Metre): readonly GridHit[] {
  const steps = [...grid];
  const at = (step: number): number => Math.round((step * barTicks(metre)) / steps.length);
  return steps.flatMap((character, step): GridHit[] => {
    if (character === '-' || character === '=') {
      return [];
    }
    let next = step + 1;
    while (steps[next] === '=') {
      next += 1;
    }
    return [
      {
        start: at(step),
        duration: at(next) - at(step),
        accent: character === 'X',
        open: character === 'o',
      },
    ];
  });
}
