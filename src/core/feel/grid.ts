import { barTicks, type Metre, type Ticks, ticks } from '../base';
import type { Grid } from './types';

/** A hit or a note of a grid. */
export interface GridNote {
  /** From the beginning of the bar. */
  readonly start: Ticks;
  /** Until the grid stops holding it. */
  readonly duration: Ticks;
  readonly accent: boolean;
}

/** The hits and notes of a grid spread over a bar of a metre; the steps share the bar evenly. */
export function readGrid(grid: Grid, metre: Metre): readonly GridNote[] {
  const step = barTicks(metre) / grid.length;
  const notes: GridNote[] = [];
  for (let index = 0; index < grid.length; index += 1) {
    const sign = grid[index];
    if (sign !== 'x' && sign !== 'X' && sign !== 'o') continue;
    let end = index + 1;
    while (grid[end] === '=') end += 1;
    notes.push({ start: ticks(index * step), duration: ticks((end - index) * step), accent: sign === 'X' });
  }
  return notes;
}
