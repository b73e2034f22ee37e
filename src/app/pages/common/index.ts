export { lineAtHand } from './at-hand';
export { gliding, NARROW, useMedia, useNear, usePrinting, useWidth, whenIdle } from './hooks';
export { practiceAddress } from './practice-address';
