export { FileNote } from './note';
export { openFile } from './open-file';
export { picturesBeside } from './picture';
