export { buildPerformance } from './build';
export type { BassPlan, ClickPlan, PerformanceOptions } from './options';
export { playedBarAt, secondsAt, tickAt } from './time';
export * from './types';
