export { Tools } from './tools';
