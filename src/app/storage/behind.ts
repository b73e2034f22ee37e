/**
 * What of the storage the first look does without: reading and writing lessons, also while the page is left, the list of
 * all of them, earlier states, histories, and the browser's promise.
 */
export { readLesson, whyNotKept } from '../../core/lesson';
export { forgetLeft, noteLeft, withLeft } from './left';
export { listShelf } from './list-shelf';
export { createPast } from './past';
export { browserKeeping } from './persistence';
export { factsBeside, foundLesson, readFacts } from './read-records';
