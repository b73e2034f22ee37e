import { unnamed } from './forget';

/** What goes into one folder of a packet. */
export interface PacketFolder {
  /** Plain, safe on every system, and no other folder's. */
  readonly name: string;
  /** Id of the version that is in it; null for the tune. */
  readonly version: string | null;
  /** What the version is called in the packet. */
  readonly called: string;
  /** The students who have it: for whoever makes the packet, and for the packet where names are ticked. */
  readonly students: readonly string[];
}

/** For whom a packet is. */
export interface PacketWishes {
  readonly versions: readonly { readonly id: string; readonly name: string }[];
  /** What the tune is called beside the versions. */
  readonly tune: string;
  /** The members of a class with the version each has; null for the tune and every version, for whomever. */
  readonly members: readonly { readonly name: string; readonly version: string | null }[] | null;
  /** Students' names may stand in the packet. */
  readonly named: boolean;
  /** Names of all students that are kept: where names are not ticked, no version is called by one. */
  readonly students: readonly string[];
}

/** Names that a folder cannot have (Microsoft, "Naming Files, Paths, and Namespaces"). */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** Characters of a folder's name at most; with a number behind them they fit into 255 bytes of UTF-8. */
const LONGEST = 60;

/** A name as a folder's: letters, figures and lines only, in small letters. */
function folderStem(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-');
  const stem = Array.from(plain).slice(0, LONGEST).join('').replace(/^-|-$/g, '');
  return stem === '' ? 'folder' : RESERVED.test(stem) ? `${stem}-1` : stem;
}

/** Names of folders, each its own also where a system does not tell large letters from small ones. */
function apart(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const stem = folderStem(name);
    let free = stem;
    for (let number = 2; taken.has(free.toUpperCase()); number += 1) free = `${stem}-${number}`;
    taken.add(free.toUpperCase());
    return free;
  });
}

/** A text in which no student is called by name. */
const withoutNames = (students: readonly string[], text: string): string =>
  [...students]
    .map((name) => name.trim())
    // A name within another one is looked for after it.
    .sort((one, other) => other.length - one.length)
    .reduce((left, name) => unnamed(name, left), text);

/** A copy of a lesson for one person. */
export interface Copy {
  readonly version: string | null;
  /** What it is called among the others. */
  readonly called: string;
  /** Whose it is, where names may be told. */
  readonly student: string | null;
}

/** What the versions that there are are called where it may be read by others. */
const callerOf =
  ({ versions, tune, named, students }: PacketWishes) =>
  (id: string | null): string => {
    const name = versions.find((version) => version.id === id)?.name;
    return name === undefined ? tune : named ? name : withoutNames(students, name);
  };

/** The members of a class with versions that there are. */
function holdersIn({ versions, members }: PacketWishes) {
  const known = (id: string | null) => (versions.some((version) => version.id === id) ? id : null);
  return members?.map(({ name, version }) => ({ name, version: known(version) })) ?? null;
}

/** A copy for each member of a class, in its order; or of the tune and every version. */
export function copiesOf(wishes: PacketWishes): readonly Copy[] {
  const called = callerOf(wishes);
  const holders = holdersIn(wishes);
  if (holders === null)
    return [null, ...wishes.versions.map(({ id }) => id)].map((version) => ({
      version,
      called: called(version),
      student: null,
    }));
  return holders.map(({ name, version }) => ({
    version,
    called: wishes.named ? name : called(version),
    student: wishes.named ? name : null,
  }));
}

/**
 * The folders of a packet: one a version that someone has; or one a student, in the class's order, where their names
 * may stand in it.
 */
export function foldersOf(wishes: PacketWishes): readonly PacketFolder[] {
  const { versions, members, named } = wishes;
  const called = callerOf(wishes);
  const holders = holdersIn(wishes) ?? [];
  const folders =
    named && members !== null
      ? holders.map(({ name, version }) => ({ title: name, version, students: [name] }))
      : [
          ...new Set(
            members === null
              ? [null, ...versions.map(({ id }) => id)]
              : holders.map(({ version }) => version),
          ),
        ].map((version) => ({
          title: called(version),
          version,
          students: holders.filter((holder) => holder.version === version).map(({ name }) => name),
        }));
  const names = apart(folders.map(({ title }) => title));
  return folders.map(({ version, students: having }, index) => ({
    name: names[index] ?? '',
    version,
    called: called(version),
    students: having,
  }));
}
