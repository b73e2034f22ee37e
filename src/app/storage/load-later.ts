/** Fetches what keeps students, classes and series. */
export const loadRegister = () => import('./register');

/** Fetches what keeps the lessons in a folder. */
export const loadFolder = () => import('./folder');
