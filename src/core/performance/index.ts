export { buildPerformance } from './build';
export { proposeLadder } from './ladder';
export type { PerformanceOptions } from './options';
export {
  boundsOf,
  climbs,
  EVERY_BEAT,
  EVERY_ROUND,
  mixOf,
  type PlayStep,
  passageOf,
  performanceOf,
  practiceTempo,
  soundsTheSame,
  stepsOf,
} from './steps';
export { straightened } from './straighten';
export { playedBarAt, secondsAt, tickAt } from './time';
export * from './types';
