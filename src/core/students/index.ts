export {
  describeEntryProblem,
  type Entry,
  type Given,
  newClass,
  newSeries,
  newStudent,
  REGISTER_LIMITS,
  readEntry,
  type SchoolClass,
  type Series,
  type Student,
  THING_KINDS,
  type Thing,
  type ThingKind,
  tidyName,
  type Week,
} from './entry';
export { type Copy, copiesOf, foldersOf, type PacketFolder, type PacketWishes } from './folders';
export { forgetStudent, isNamedIn, names } from './forget';
export { giveLesson, lessonFor, setGiven, takeBack, toMend } from './given';
export { meantFor, versionGiven } from './meant';
export {
  classesIn,
  entriesNaming,
  entriesToAdd,
  membersByName,
  membersOf,
  moveMember,
  setMember,
  studentsIn,
  withoutEntry,
} from './register';
