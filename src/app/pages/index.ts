export { App } from './app';
export { openLinkedLesson } from './arrival';
export { createPlayback } from './playback';
export { StartFailed } from './problem';
