export { folderOf } from './folder-watch';
export { reminderOf } from './reminder';
export { Shelf } from './shelf';
