export { type ChartKeys, findChartKeys, weightedChords } from './analysis';
export { chordFunctions } from './chord-functions';
export { type BarEdit, type EditedChart, editBar, typedBar } from './edit';
export { sameEnding, timesToSay } from './endings';
export { matchByCaret } from './follow-text';
export {
  barSignature,
  chordsIn,
  harmonyAt,
  harmonyParts,
  harmonyText,
  shownHarmony,
  signatureText,
  soundingSignature,
  transposeSignature,
} from './harmony';
export { CHART_METRES, chartMetreNames, MOST_BARS, MOST_TIMES, pickupMetre, pickupOfEighths } from './limits';
export { matchBars } from './match';
export {
  caretInLetters,
  chartInLetters,
  chordsInLetters,
  guessedIn,
  typedChartIn,
  typedChordsIn,
  typedProblem,
} from './naming';
export {
  beginsBar,
  jumpOf,
  NAVIGATION,
  type Navigation,
  navigationWords,
  readNavigation,
} from './navigation';
export { nextSigns } from './next-signs';
export { numeralKeys } from './numeral-keys';
export { neighboursOf, playOrder, repeatSigns } from './order';
export { ownSpans } from './own-spans';
export { parseChart } from './parse';
export { countedIn, type WrittenMetre, writtenMetres } from './parts';
export { type PastedOffer, pastedOffer } from './pasted';
export { printChart, typedSignature } from './print';
export { writeKey } from './section-key';
export { rewritePlace } from './text';
export { transposeChartText } from './transpose';
export * from './types';
export { usesOf, writtenBar } from './uses';
export { wordsOf } from './words';
