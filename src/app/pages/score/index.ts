export { ScoreFigure } from './figure';
export { loadScore, useScore } from './ready';
export { straightened } from './straighten';
export type { BarButton } from './system';
