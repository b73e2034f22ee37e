export { analyseLine } from './analysis';
export { composeLine } from './compose/compose';
export { anotherTake, isAnotherTake, rankedTakes, type Take } from './compose/takes';
export { type MusicFinding, musicFindings } from './findings';
export { ideasForBar } from './ideas';
export { barBreaches, checkLine } from './line-rules';
export * from './types';
