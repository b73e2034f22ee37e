export { LineAsked } from './fold';
