export { folderOf } from './folder-watch';
export { Shelf } from './shelf';
