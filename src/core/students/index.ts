export {
  describeEntryProblem,
  type Entry,
  type Given,
  newClass,
  newStudent,
  REGISTER_LIMITS,
  readEntry,
  type Student,
} from './entry';
export { forgetStudent, names } from './forget';
export { giveLesson, lessonFor, setGiven, takeBack, toMend } from './given';
export { entriesToAdd, membersOf, setMember, studentsIn, withoutEntry } from './register';
