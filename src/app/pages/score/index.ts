export { ScoreFigure } from './figure';
export { loadScore, useScore } from './ready';
export type { BarButton } from './system';
