export { openChosen } from './open';
export { WritingPage } from './page';
export { usePracticeView } from './practice-view';
