export type { FolderDoor } from './folder';
export {
  type Elsewhere,
  type LessonStorage,
  openStorage,
  type RemovedLesson,
} from './lesson-storage';
export { loadFolder, loadRegister } from './load-later';
export type { News } from './news';
export { readKeys, writeKeys } from './own-keys';
export type { EarlierState } from './past';
export type { Persistence } from './persistence';
export type { FoundLesson, ListedLesson } from './records';
export type { Register, RegisterList } from './register';
export { openStartGuard, type StartGuard } from './start-guard';
