/**
 * What of the storage the first look does without: reading and writing lessons, the list of all of them, earlier
 * states, histories, and the browser's promise.
 */
export { readLesson, whyNotKept } from '../../core/lesson';
export { listShelf } from './list-shelf';
export { createPast } from './past';
export { browserKeeping } from './persistence';
export { factsBeside, foundLesson, readFacts } from './read-records';
