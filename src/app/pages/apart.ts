/** What the page that a lesson is written on does without at its start. */

/** Fetches what keeps the app for the time without a network. */
export const loadOffline = () => import('./new-version');

/** Fetches what is shown inside a page of another site. */
export const loadForeignFrame = () => import('./foreign-frame');
