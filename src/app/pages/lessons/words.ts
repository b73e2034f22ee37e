import type { ListedLesson } from '../../storage';

/** How a lesson on this device is called. */
export const shelfTitle = ({ title }: Pick<ListedLesson, 'title'>): string =>
  title === '' ? 'Without a title' : title;

const DAY_AND_TIME = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** A moment in the teacher's own time. */
export const momentText = (time: number): string => DAY_AND_TIME.format(time);

/** When it was saved, in the teacher's own time; of one that cannot be read, that it cannot. */
export const savedText = (lesson: ListedLesson): string =>
  lesson.readable ? `saved ${momentText(lesson.savedAt)}` : 'cannot be read';
