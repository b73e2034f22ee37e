export { type LessonStorage, type ListedLesson, openStorage } from './database';
