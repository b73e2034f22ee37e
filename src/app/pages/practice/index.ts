export { StudentPage } from './student-page';
export { practiceView } from './view';
