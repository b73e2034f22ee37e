export { ForAnotherStudent } from './fold';
