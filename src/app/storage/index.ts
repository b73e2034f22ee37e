export { describeStorageFault, type LessonStorage, type ListedLesson, openStorage } from './database';
