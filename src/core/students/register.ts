import { hashText, orderedText } from '../base';
import { LESSON_LIMITS } from '../lesson';
import { type Entry, REGISTER_LIMITS, type SchoolClass, type Student } from './entry';
import { names, unnamed } from './forget';

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** The students of a register, by name. */
export const studentsIn = (entries: readonly Entry[]): readonly Student[] =>
  entries
    .filter((entry) => entry.kind === 'student')
    .sort((one, other) => byName.compare(one.name, other.name));

/** The classes of a register, by name. */
export const classesIn = (entries: readonly Entry[]): readonly SchoolClass[] =>
  entries
    .filter((entry) => entry.kind === 'class')
    .sort((one, other) => byName.compare(one.name, other.name));

/** The students of a class that there are, in the class's order. */
export const membersOf = (group: SchoolClass, entries: readonly Entry[]): readonly Student[] =>
  group.members.flatMap((id) => {
    const found = entries.find((entry) => entry.id === id);
    return found?.kind === 'student' ? [found] : [];
  });

/** A student joins a class or leaves it; the very same class where nothing changes, or it is full. */
export function setMember(group: SchoolClass, student: string, isMember: boolean): SchoolClass {
  if (group.members.includes(student) === isMember) return group;
  if (isMember && group.members.length >= REGISTER_LIMITS.members) return group;
  return {
    ...group,
    members: isMember ? [...group.members, student] : group.members.filter((each) => each !== student),
  };
}

/** A class with its students by name; who cannot be read stays behind them. The very same class where they stand so. */
export function membersByName(group: SchoolClass, entries: readonly Entry[]): SchoolClass {
  const known = studentsIn(entries)
    .map(({ id }) => id)
    .filter((id) => group.members.includes(id));
  const members = [...known, ...group.members.filter((id) => !known.includes(id))];
  return members.every((id, index) => id === group.members[index]) ? group : { ...group, members };
}

/** A member of a class changes places with the one before them (-1) or after them (1). */
export function moveMember(group: SchoolClass, student: string, by: -1 | 1): SchoolClass {
  const at = group.members.indexOf(student);
  const other = group.members[at + by];
  if (at === -1 || other === undefined) return group;
  const swapped = new Map([
    [student, other],
    [other, student],
  ]);
  return { ...group, members: group.members.map((id) => swapped.get(id) ?? id) };
}

/** What was noted of lessons, with a student's name out of their titles; the very same list where it is in none. */
function untitled<Noted extends { readonly title: string }>(
  student: string,
  noted: readonly Noted[],
): readonly Noted[] {
  const told = noted.map((one) => {
    const title = unnamed(student, one.title);
    return title === one.title ? one : { ...one, title: title.slice(0, LESSON_LIMITS.title) };
  });
  return told.every((one, index) => one === noted[index]) ? noted : told;
}

/**
 * An entry after another one was deleted: nothing in it leads there any more, and the titles of lessons that were noted,
 * in which a version is named, no longer name a student who was deleted. The very same entry where nothing changes.
 */
export function withoutEntry(entry: Entry, gone: Pick<Entry, 'id' | 'kind' | 'name'>): Entry {
  const student = gone.kind === 'student' ? gone.name.trim() : '';
  switch (entry.kind) {
    case 'class':
      return setMember(entry, gone.id, false);
    case 'student': {
      const given = untitled(student, entry.given);
      return given === entry.given ? entry : { ...entry, given };
    }
    case 'series': {
      const of = entry.of === gone.id ? null : entry.of;
      const weeks = untitled(student, entry.weeks);
      return of === entry.of && weeks === entry.weeks ? entry : { ...entry, of, weeks };
    }
  }
}

/** What an entry is called in whose own words, its name or the teacher's notes, a name stands; none where it does in none. */
export const entriesNaming = (student: string, entries: readonly Entry[]): readonly string[] =>
  entries
    .filter((entry) => {
      const noted = entry.kind === 'student' ? [entry.notes, ...entry.given.map(({ mend }) => mend)] : [];
      return names(student, [entry.name, ...noted].join('\n'));
    })
    .map((entry) => entry.name);

const OTHER = ' (from the file)';

/**
 * What of the entries of a file is added to a register: nothing that stands there is written over. One that stands
 * there in another state comes beside it under an id and a name of its own, which are made of what it holds, so that
 * the same file brought in twice brings nothing the second time.
 * @param standing - what stands under an id: an entry, something that cannot be read, or nothing
 */
export function entriesToAdd(
  theirs: readonly Entry[],
  standing: (id: string) => Entry | 'unreadable' | null,
): readonly Entry[] {
  const added = new Map<string, Entry>();
  // A file may hold two states of one entry: what it brought first is not written over either.
  const found = (id: string) => added.get(id) ?? standing(id);
  for (const entry of theirs) {
    const here = found(entry.id);
    if (here === null) added.set(entry.id, entry);
    else if (here === 'unreadable' || orderedText(here) !== orderedText(entry)) {
      const id = `${entry.id.slice(0, 100)}-${hashText(orderedText(entry)).toString(16)}`;
      if (found(id) === null)
        added.set(id, {
          ...entry,
          id,
          name: entry.name.slice(0, REGISTER_LIMITS.name - OTHER.length) + OTHER,
        });
    }
  }
  return [...added.values()];
}
