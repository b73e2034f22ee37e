export { analyseAhead, analyseLine, reasonsFor } from './analysis';
export type { MusicFinding } from './bar-findings';
export { aimsMissed } from './compose/aim-misses';
export { composeLine } from './compose/compose';
export { anotherTake, isAnotherTake, rankedTakes, type Take } from './compose/takes';
export { explainLine } from './explain';
export { MOST_ACCIDENTALS, musicFindings } from './findings';
export { ideaOffer, ideasForBar } from './ideas';
export { DEGREE_STEPS } from './kept-degrees';
export { limitsIn } from './level';
export { levelLimits } from './level-limits';
export { type MeasuredLevel, measuredLevel } from './measured-level';
export { type LineDistance, lineDistance } from './regrade/distance';
export {
  type BarChange,
  nearestBars,
  type Regraded,
  reasonSentences,
  regradeLine,
  withoutChanges,
} from './regrade/regrade';
export { barBreaches, checkLine } from './rules/check';
export { type BuildUpWish, buildUp, type Stage, thingsOf } from './stages/build-up';
export { MOVABLE_THINGS, type MovableThing, STAGE_THINGS, type StageThing } from './stages/things';
export { stagesCounted, stageTask, stageThingName } from './stages/words';
export { explainToStudent, type ToldSentence } from './student-words';
export { type LineStudy, studyLine } from './study/study';
export { TECHNIQUE_ROWS } from './techniques/table';
export * from './types';
