export { FileNote } from './note';
export { openFile } from './open-file';
export { picturesBeside } from './picture';
export { Question } from './question';
