export { factsOf, isFacts, type LessonFacts } from './facts';
export {
  ANY_LESSON,
  choicesOn,
  findOnShelf,
  type OnShelf,
  SHELF_ORDERS,
  type ShelfOrder,
  type ShelfWish,
} from './search';
export { isLargeChange, isWorthKeeping, type KeptState, statesToLetGo } from './states';
