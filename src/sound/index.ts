export { renderWav, type WavOptions } from './export';
export { type Ear, listen } from './listener';
export { createPlayer } from './player';
export * from './types';
