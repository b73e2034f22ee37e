import type { SchoolClass, Student } from './entry';
import { names } from './forget';

/** What is asked of a version here: which it is, and what it is called. */
interface Called {
  readonly id: string;
  readonly name: string;
}

/** What of a lesson is given out. */
interface Versions {
  /** Id of the lesson. */
  readonly lesson: string;
  readonly versions: readonly Called[];
}

/** The version of a lesson that a student was given last; null for the tune, and where they were given none of it. */
export function versionGiven(
  { given }: Pick<Student, 'given'>,
  { lesson, versions }: Versions,
): string | null {
  const last = given
    .filter((one) => one.lesson === lesson)
    // Of one day, the one that was given later stands further down.
    .reduce<(typeof given)[number] | null>(
      (latest, one) => (latest === null || one.day >= latest.day ? one : latest),
      null,
    );
  return versions.find(({ id }) => id === last?.version)?.id ?? null;
}

/** The version whose name says a name, the latest made where several do. */
const calledFor = (name: string, versions: readonly Called[]): string | null =>
  versions.findLast((version) => names(name, version.name))?.id ?? null;

/**
 * The version that is meant for a member of a class: the one that is called for them, or they had, or that is called
 * for the class; null where there is none.
 */
export const meantFor = (student: Student, group: SchoolClass, lesson: Versions): string | null =>
  calledFor(student.name, lesson.versions) ??
  versionGiven(student, lesson) ??
  calledFor(group.name, lesson.versions);
