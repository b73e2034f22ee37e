export { NotePad } from './note-pad';
export { Remarks } from './remarks';
