export { ScoreFigure } from './figure';
export { barToRead, countedBeat } from './reading-ahead';
export { loadScore, useScore } from './ready';
export { type BarButton, usePlayheadStyle } from './system';
