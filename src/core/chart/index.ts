export { type ChartKeys, chordFunctions, findChartKeys, weightedChords } from './analysis';
export { barSignature, harmonyAt, transposeSignature } from './harmony';
export { CHART_METRES } from './limits';
export { matchBars } from './match';
export { playOrder } from './order';
export { parseChart } from './parse';
export { printChart } from './print';
export { transposeChartText } from './transpose';
export * from './types';
