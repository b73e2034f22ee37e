export { App } from './app';
export { createPlayback } from './playback';
export { StartFailed } from './problem';
