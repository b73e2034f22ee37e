export { renderWav, type WavOptions } from './export';
export { createPlayer } from './player';
export * from './types';
