/**
 * Fetches what reads lessons and holds edits against the validator. It does not stand in the room's door: a door that
 * holds more than doors is taken into the first look with all that it leads to.
 */
export const loadChecking = () => import('./checking');
