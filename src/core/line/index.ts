export { analyseLine, reasonsFor } from './analysis';
export type { MusicFinding } from './bar-findings';
export { aimsMissed } from './compose/aim-misses';
export { composeLine } from './compose/compose';
export { anotherTake, isAnotherTake, rankedTakes, type Take } from './compose/takes';
export { explainLine } from './explain';
export { MOST_ACCIDENTALS, musicFindings } from './findings';
export { ideaOffer, ideasForBar } from './ideas';
export { levelLimits, limitsIn } from './level';
export { type MeasuredLevel, measuredLevel } from './measured-level';
export { barBreaches, checkLine } from './rules/check';
export { type BuildUpWish, buildUp, type Stage, thingsOf } from './stages/build-up';
export {
  MOVABLE_THINGS,
  type MovableThing,
  STAGE_THINGS,
  type StageThing,
  stageTask,
  stageThingName,
} from './stages/things';
export { explainToStudent } from './student-words';
export { TECHNIQUE_ROWS } from './techniques/table';
export * from './types';
