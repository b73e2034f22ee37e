export {
  LONGEST_SYMBOL,
  parseChord,
  type SymbolParts,
  shortened,
  splitSymbol,
  transposeChord,
  unreadableSymbol,
} from './chords';
export { degreeOf, formatDegree, nameOfDegree, sameDegree } from './degrees';
export { isForeignDominantOf } from './foreign-dominants';
export { type ChordFunction, chordFunction } from './functions';
export {
  intervalBetween,
  intervalBetweenPitches,
  invertDirection,
  transposeName,
  transposePitch,
} from './intervals';
export { closeGuess, findKey, type KeyFindingOptions, weightedText } from './key-finding';
export type { WeightedNote } from './key-fit';
export {
  ALL_KEYS,
  alterationInKey,
  bestEnharmonicKey,
  C_MAJOR,
  describeKey,
  describeSignature,
  keyNames,
  keySignature,
  keysOfMode,
  parseKey,
  sameKey,
  type Transposition,
  transpositionBy,
  transpositionTo,
  unreadableKey,
} from './keys';
export { hasMinorThird } from './modes';
export { formatName, formatPitch, parseName } from './names';
export {
  chordPartsIn,
  type DrawnSymbol,
  describeKeyIn,
  describeScaleIn,
  formatChordIn,
  formatNameIn,
  formatPitchIn,
  NAMINGS,
  type Naming,
  parseNameIn,
} from './naming';
export { looksLikeNumeral, parseNumeral } from './numerals';
export { scaleFor } from './scales';
export { type SpellingContext, spellMidi } from './spelling';
export { suggestChord, suggestKey } from './suggestions';
export { keyInLetters, symbolInLetters, typedKeyIn, typedSymbolIn } from './symbol-naming';
export * from './types';
