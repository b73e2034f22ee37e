export { Booklet, type Chapter } from './booklet';
