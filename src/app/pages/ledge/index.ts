export { Ledge } from './ledge';
export { FRETBOARD, useLedgeHeight, usePlayedLine } from './line';
