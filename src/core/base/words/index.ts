export { barName, barNames, barRange } from './bars';
export { counted, countedInWords, numberWord } from './numbers';
export { capitalised, listed } from './text';
