export { LessonsMenu } from './menu';
