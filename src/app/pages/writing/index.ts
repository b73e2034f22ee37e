export { WritingPage } from './page';
export { usePracticeView } from './practice-view';
