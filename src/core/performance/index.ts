export { buildPerformance } from './build';
export type { PerformanceOptions } from './options';
export { type PlayStep, performanceOf, stepsOf } from './steps';
export { playedBarAt, secondsAt, tickAt } from './time';
export * from './types';
