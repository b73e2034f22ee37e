export { analyseLine } from './analysis';
export type { MusicFinding } from './bar-findings';
export { composeLine } from './compose/compose';
export { anotherTake, isAnotherTake, rankedTakes, type Take } from './compose/takes';
export { musicFindings } from './findings';
export { ideasForBar } from './ideas';
export { levelLimits } from './level';
export { barBreaches, checkLine } from './line-rules';
export * from './types';
