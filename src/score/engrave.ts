import type { Sheet } from '../core/lesson';
import type { ScoreLayout, ScoreOptions } from './types';

/** Lays a piece out; see `layoutScore`. */
export function engrave(_sheet: Sheet, options: ScoreOptions): ScoreLayout {
  return { width: options.width, height: 0, systems: [] };
}
