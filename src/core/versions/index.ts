export { apartFromTune, type VersionApart } from './apart';
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
export { carryMend, leaveMend, type Mend, mendsOf, numberOfBar } from './mends';
export { dropOwn, keptElsewhere, type Own, ownOf, type SharedField, shareOwn } from './own';
