export { barsAtSight } from './at-sight';
export { broughtBy, checkLesson, type Finding } from './check';
export { type Composition, composePiece } from './compose';
export { type OtherHand, type PlayedElsewhere, playedElsewhere } from './elsewhere';
export type { Repair } from './hand-check';
export { explainPiece, ideaOfferFor, ideasFor } from './ideas';
export { inKey, KEY_HANDS, type KeyChoice, type KeyHand, keysFor } from './keys-for';
export { type NeckChange, neckChanges, withNeckChanges } from './on-neck';
export {
  levelOfLine,
  nearnessWords,
  nextLevel,
  type PieceRegrade,
  type RegradeChange,
  regradePiece,
  withRegrade,
} from './regrade';
export { type RankedTake, rankTakes } from './take-words';
export { anotherTake, recallTake, severalTakes } from './takes';
