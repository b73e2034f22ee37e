export { BuildUpOnSheet } from './on-sheet';
export { StagesToPractise } from './to-practise';
