export { proposeLadder } from './ladder';
export { straightened, swingsEighths, unswung } from './straighten';
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
