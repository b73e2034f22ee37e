export { ladderFrom, proposeLadder } from './ladder';
export { fasterBy, loopOver, passageFor, passageTyped } from './passages';
export { straightened, swingsEighths } from './straighten';
export {
  bassAlone,
  boundsOf,
  climbs,
  EVERY_BEAT,
  EVERY_ROUND,
  mixOf,
  PARTS,
  type Part,
  passageOf,
  practiceTempo,
  soundsTheSame,
} from './wishes';
