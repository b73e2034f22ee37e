export { exportName } from './file-name';
export { holdsLesson, readLessonLink, writeLessonLink } from './link/link';
export { writeMidi } from './midi/write';
export { packMxl } from './musicxml/mxl';
export { writeMusicXml } from './musicxml/score';
export { fillPracticePage } from './practice/embed';
export { writeTextTab } from './tab/write';
