export { parseChord, type SymbolParts, splitSymbol, transposeChord } from './chords';
export { degreeOf, formatDegree, nameOfDegree, sameDegree } from './degrees';
export {
  intervalBetween,
  intervalBetweenPitches,
  invertDirection,
  transposeName,
  transposePitch,
} from './intervals';
export { findKey, type WeightedChord } from './key-finding';
export {
  ALL_KEYS,
  alterationInKey,
  bestEnharmonicKey,
  describeKey,
  describeSignature,
  keyNames,
  keySignature,
  parseKey,
  sameKey,
  type Transposition,
  transpositionBy,
  transpositionTo,
} from './keys';
export { formatName, formatPitch, parseName } from './names';
export { scaleFor } from './scales';
export { type SpellingContext, spellMidi } from './spelling';
export * from './types';
