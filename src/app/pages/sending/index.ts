export { Sending } from './sending';
