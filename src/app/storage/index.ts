export type { FolderDoor } from './folder';
export { type LessonStorage, openStorage, type RemovedLesson } from './lesson-storage';
export type { News } from './news';
export { readKeys, writeKeys } from './own-keys';
export type { EarlierState } from './past';
export type { Persistence } from './persistence';
export type { FoundLesson, ListedLesson } from './records';
export type { Register, RegisterList } from './register';
export { openStartGuard, type StartGuard } from './start-guard';

/** Fetches what keeps students, classes and series. */
export const loadRegister = () => import('./register');

/** Fetches what keeps the lessons in a folder. */
export const loadFolder = () => import('./folder');
