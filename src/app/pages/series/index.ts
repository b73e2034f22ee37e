export { SeriesOfLessons } from './series';
