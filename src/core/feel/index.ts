export {
  FEELS,
  feelBeats,
  feelById,
  feelInWay,
  feelMetre,
  feelTempo,
  homeMetre,
  isFeelId,
  isSwung,
  swingRatio,
  unswung,
} from './feels';
export { type GridNote, readGrid, type Stroke } from './grid';
export { feelsIn, rhythmsIn, whyNotPlayedIn } from './metres';
export { PHRASE_BOOKS, phraseBookOf } from './phrases/books';
export { contourOf, slotBeats } from './phrases/notation';
export * from './phrases/types';
export { rhythmCellsOf } from './rhythms/table';
export { type BassStress, bassStressOf } from './stress';
export * from './types';
