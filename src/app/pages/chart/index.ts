export { BarChords } from './bar-chords';
export { ChartField } from './field';
