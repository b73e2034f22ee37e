export { loadOffline } from './apart';
export { App } from './app';
export { openLinkedLesson } from './arrival';
export { practiceAddress } from './common';
export { ForeignFrame } from './foreign-frame';
export { createPlayback } from './playing';
export { StartFailed } from './problem';
