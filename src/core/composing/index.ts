export { checkLesson, type Finding } from './check';
export { type Composition, composePiece } from './compose';
export type { Repair } from './hand-check';
export { explainPiece, ideaOfferFor, ideasFor } from './ideas';
export { type RankedTake, rankTakes } from './take-words';
export { anotherTake, recallTake, severalTakes } from './takes';
