export { expectedOf, type PlayedRound } from './expected';
export { barMarks, withoutGuesses } from './honest';
export { letterOf, letterText, mendOf, readLetter } from './letter';
export { likely } from './likely';
export { offsetOf } from './offset';
export { reportOf } from './report';
export { summaryOf, tallyOf } from './summary';
export type * from './types';
export { barWords, roundWords, summaryWords } from './words';
