export { barName, barNames, barRange } from './bars';
export { beatWords } from './beats';
export { lengthWords } from './lengths';
export { counted, countedInWords, numberWord } from './numbers';
export { capitalised, listed } from './text';
export { timeWords } from './times';
