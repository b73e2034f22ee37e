import { hashText, orderedText } from '../base';
import { type Entry, REGISTER_LIMITS, type SchoolClass, type Student } from './entry';

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

/** An entry after another one was deleted: nothing in it leads there any more. */
export function withoutEntry(entry: Entry, gone: string): Entry {
  if (entry.kind === 'class') return setMember(entry, gone, false);
  return entry.kind === 'series' && entry.of === gone ? { ...entry, of: null } : entry;
}

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
