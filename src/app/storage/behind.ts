/** What of the storage the first look does without: the list of all lessons, earlier states, histories, and the browser's promise. */
export { listShelf } from './list-shelf';
export { createPast } from './past';
export { browserKeeping } from './persistence';
