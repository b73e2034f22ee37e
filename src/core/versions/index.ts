export {
  addVersion,
  openVersion,
  openVersionOf,
  removeVersion,
  renameVersion,
  storeEdited,
  versionOf,
} from './commands';
export { lessonAsOpen, lessonOfVersion } from './derive';
