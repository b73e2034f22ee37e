export { LessonCheck } from './lesson-check';
export { LineExplained } from './line-explained';
export { Takes } from './takes';
