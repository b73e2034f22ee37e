export { loadOffline, loadPractice } from './apart';
export { App } from './app';
export { openLinkedLesson } from './arrival';
export { createPlayback } from './playing';
export { StartFailed } from './problem';
