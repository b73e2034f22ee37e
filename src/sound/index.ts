export { createNoteEar } from './ear/note-ear';
export { renderWav, type WavOptions } from './export';
export { type Ear, listen } from './listener';
export { createPlayer } from './player';
export { renderRounds } from './synthesis/rounds';
export { createKit } from './synthesis/voices';
export * from './types';
export { encodeWav } from './wav';
