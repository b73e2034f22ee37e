import type { ListedLesson } from '../../storage';

/** How a lesson on this device is called. */
export const shelfTitle = ({ title }: ListedLesson): string => (title === '' ? 'Without a title' : title);

/** When it was saved, in the teacher's own time. */
export const savedText = ({ savedAt }: ListedLesson): string =>
  `saved ${new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(savedAt)}`;
