export { type Composer, createComposer } from './composer';
export type { CheckedFinding, ComparedTake, Deed, FoundRepair } from './messages';
