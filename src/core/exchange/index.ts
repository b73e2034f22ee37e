export { exportName } from './file-name';
export { forNobody, namesIn } from './for-nobody';
export { holdsLesson, type LinkProblem, readLessonLink, writeLessonLink } from './link/link';
export { writeMidi } from './midi/write';
export { packMxl } from './musicxml/mxl';
export { writeMusicXml } from './musicxml/score';
export { fillPracticePage, lessonInPage } from './practice/embed';
export { forStudent } from './practice/for-student';
export type { Chosen, FileFacts, ReadFile, Wishes } from './read';
export { holdsTab } from './tab/systems';
export { writeTextTab } from './tab/write';

/** Fetches the readers of other programs' files, which only an opened file needs. */
export const loadReader = (): Promise<typeof import('./read')> => import('./read');
