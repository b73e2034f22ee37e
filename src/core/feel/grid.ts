import { barTicks, type Metre, type Ticks, ticks } from '../base';
import type { Grid } from './types';

/** A hit or a note of a grid. */
export interface GridNote {
  /** From the beginning of the bar. */
  readonly start: Ticks;
  /** Until the grid stops holding it. */
  readonly duration: Ticks;
  readonly stroke: Stroke;
}

/** How strongly a hit is struck, as a grid writes it. */
export type Stroke = 'ghost' | 'soft' | 'plain' | 'accent';

const STROKES: Readonly<Record<string, Stroke>> = {
  g: 'ghost',
  s: 'soft',
  x: 'plain',
  o: 'plain',
  X: 'accent',
};

/** The hits and notes of a grid spread over a bar of a metre; the steps share the bar evenly. */
export function readGrid(grid: Grid, metre: Metre): readonly GridNote[] {
  const step = barTicks(metre) / grid.length;
  const notes: GridNote[] = [];
  for (let index = 0; index < grid.length; index += 1) {
    const sign = grid[index];
    const stroke = STROKES[sign ?? ''];
    if (stroke === undefined) continue;
    let end = index + 1;
    while (grid[end] === '=') end += 1;
    notes.push({ start: ticks(index * step), duration: ticks((end - index) * step), stroke });
  }
  return notes;
}
