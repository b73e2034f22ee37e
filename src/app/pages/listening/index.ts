export { type BarMarks, Listening } from './listening';
