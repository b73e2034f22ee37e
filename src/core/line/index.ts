export { analyseLine } from './analysis';
export { composeLine } from './compose/compose';
export { ideasForBar } from './ideas';
export { barBreaches, checkLine } from './line-rules';
export * from './types';
