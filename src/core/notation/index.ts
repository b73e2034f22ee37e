export { type Accidental, accidentalsOf, type WrittenPitch } from './accidentals';
export { type CountMark, countingOf } from './counting';
export { notateBar } from './rhythm';
export * from './types';
