import type { ListedLesson } from '../../storage';

/** How a lesson on this device is called. */
export const shelfTitle = ({ title }: ListedLesson): string => (title === '' ? 'Without a title' : title);

/** When it was saved, in the teacher's own time; of one that cannot be read, that it cannot. */
export const savedText = (lesson: ListedLesson): string =>
  lesson.readable
    ? `saved ${new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(lesson.savedAt)}`
    : 'cannot be read';
