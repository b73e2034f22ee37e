export { drawSystem } from './draw';
export { layoutScore, loadScoreFonts } from './load';
export { playheadX } from './playhead';
export type * from './types';
