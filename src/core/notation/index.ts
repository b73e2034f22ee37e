export { type Accidental, accidentalsOf, type WrittenPitch } from './accidentals';
export { type CountMark, countingOf, syllableAt, syllablePlace } from './counting';
export { notateBar } from './rhythm';
export * from './types';
