/** What of the storage the first look does without: the list of all lessons, earlier states, and histories. */
export { listShelf } from './list-shelf';
export { createPast } from './past';
