export { Ledge } from './ledge';
