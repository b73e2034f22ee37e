export { ShowView } from './show-view';
