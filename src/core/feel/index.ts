export { FEELS, feelById, feelMetre, isFeelId, swingRatio } from './feels';
export { type GridNote, readGrid } from './grid';
export * from './types';
