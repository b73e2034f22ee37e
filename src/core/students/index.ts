export {
  describeEntryProblem,
  type Entry,
  type Given,
  newClass,
  newStudent,
  REGISTER_LIMITS,
  readEntry,
  type SchoolClass,
  type Student,
} from './entry';
export { forgetStudent, names } from './forget';
export { giveLesson, lessonFor, setGiven, takeBack, toMend } from './given';
export { classesIn, entriesToAdd, membersOf, setMember, studentsIn, withoutEntry } from './register';
