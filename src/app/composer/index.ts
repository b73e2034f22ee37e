export { type Composer, createComposer } from './composer';
export type { CheckedFinding, Deed, FoundRepair } from './messages';
