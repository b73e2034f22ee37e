/** What reads lessons from elsewhere and holds edits against the validator; the first look does without it. */
export { describeLessonProblem, readLesson } from './file';
export { whyNotKept } from './keepable';
export { describeNewer } from './newer';
