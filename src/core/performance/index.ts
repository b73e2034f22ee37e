export { buildPerformance } from './build';
export { proposeLadder, type Rung } from './ladder';
export type { BassPlan, ClickPlan, PerformanceOptions } from './options';
export { playedBarAt, secondsAt, tickAt } from './time';
export * from './types';
