export { HandPad } from './pad';
