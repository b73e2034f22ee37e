export { factsOf, isFacts } from './facts';
export {
  type FolderFile,
  type FolderStep,
  fileNameFor,
  folderSteps,
  isLessonFile,
  lessonInFile,
  lessonMark,
  type Settled,
} from './folder';
export {
  ANY_LESSON,
  choicesOn,
  findOnShelf,
  type OnShelf,
  SHELF_ORDERS,
  type ShelfOrder,
  type ShelfWish,
} from './search';
export { isArchive, meetOnShelf, type ShelfEntry, shelfEntries, shelfWriter } from './shelf-file';
export { isLargeChange, isLargeStep, isWorthKeeping, type KeptState, statesToLetGo } from './states';
