export { loadForeignFrame, loadOffline } from './apart';
export { App } from './app';
export { openLinkedLesson } from './arrival';
export { practiceAddress } from './common';
export { createPlayback } from './playing';
export { StartFailed } from './problem';
