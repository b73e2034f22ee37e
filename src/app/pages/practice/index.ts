export { practiceView } from './view';
