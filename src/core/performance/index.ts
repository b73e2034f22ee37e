export { clickAlone, toneAlone } from './alone';
export { buildPerformance } from './build';
export type { PerformanceOptions } from './options';
export { type PlayPlace, type PlayStep, performanceOf, placeOfBar, stepsInTurn, stepsOf } from './steps';
export { playedBarAt, secondsAt, tickAt } from './time';
export { type TrackWishes, trackRounds } from './track';
export * from './types';
export {
  type KeyboardSheet,
  type PartSheet,
  WRITTEN_PARTS,
  type WrittenHead,
  type WrittenPart,
  type WrittenStroke,
  writtenOrgan,
  writtenPart,
} from './written';
