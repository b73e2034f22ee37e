export { Ledge } from './ledge';
export { FRETBOARD, useLedgeHeight, usePlayedLine } from './line';
export { NeckButton } from './neck-button';
