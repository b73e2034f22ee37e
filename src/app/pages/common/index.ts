export { gliding, NARROW, SMALL, useMedia, useNear, usePrinting, useWidth, whenIdle } from './hooks';
export { practiceAddress } from './practice-address';
