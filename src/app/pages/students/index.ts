export { Students } from './students';
