export { buildPerformance } from './build';
export { proposeLadder } from './ladder';
export type { PerformanceOptions } from './options';
export { playedBarAt, secondsAt, tickAt } from './time';
export * from './types';
