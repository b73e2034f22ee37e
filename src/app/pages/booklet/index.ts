export { Booklet } from './booklet';
