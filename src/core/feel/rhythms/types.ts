import type { RhythmCell } from '../types';

/** One-bar rhythms of a feel's bass by the metre's name, `4/4`. */
export type MetreCells = Readonly<Record<string, readonly RhythmCell[]>>;
