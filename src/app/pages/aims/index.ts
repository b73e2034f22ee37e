export { BarAims } from './bar-aims';
export { FurtherAims } from './further-aims-later';
export { NoteNames } from './note-names';
export { Aims } from './settings';
export { Techniques } from './techniques';
export { TuningField } from './tuning-field';
