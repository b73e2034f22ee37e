export { type Known, likenessOf, likenessWords, nearestLines, type Sketch, sketchOf } from './likeness';
export { type Outcome, type Proposal, proposals } from './next';
export { type LessonShown, shownBy, thingKey } from './shown';
export { lessonFrom } from './start';
export { isShown, type ReadWeek, type SeriesRow, seriesTable } from './table';
export { addWeek, editSeen, markThing, moveWeek, removeWeek, weekKeys } from './weeks';
export { CELL_WORDS, KIND_WORDS, proposalWords, thingName, weekBrief } from './words';
