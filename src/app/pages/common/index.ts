export { useDroppedFile } from './dropped';
export {
  gliding,
  LOW,
  NARROW,
  SMALL,
  TINY,
  useMedia,
  useNear,
  usePrinting,
  useWidth,
  whenIdle,
} from './hooks';
export { practiceAddress } from './practice-address';
export { THE_TUNE } from './tune';
