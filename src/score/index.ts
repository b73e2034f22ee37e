export { drawMarks, drawSystem, redrawSystem } from './draw';
export { layoutAlike, layoutInSteps, layoutScore, loadScoreFonts } from './load';
export { drawFretboard } from './neck/draw';
export { layoutFretboard } from './neck/layout';
export type { FretboardLayout, FretboardRequest, NeckNote } from './neck/types';
export { playheadSpan, playheadX } from './playhead';
export { inTurns, isLong, type Steps } from './steps';
export type * from './types';
