import { counted, failure, isRecord, type Result, success } from '../../../../core/base';
import { type Lesson, parseLesson } from '../../../../core/lesson';
import { isArchive, meetOnShelf, type ShelfEntry, shelfEntries, shelfWriter } from '../../../../core/shelf';
import { type Entry, readEntry } from '../../../../core/students';
import type { Session } from '../../../state';
import {
  type FoundLesson,
  type LessonStorage,
  type ListedLesson,
  loadRegister,
  type Register,
} from '../../../storage';
import { shelfTitle } from '../words';

/** The shelf as one file, and how much of it is told. */
export interface ShelfFile {
  readonly parts: readonly Uint8Array<ArrayBuffer>[];
  readonly sentence: string;
}

/** What file systems refuse in names, control characters among them. */
const REFUSED = /[\\/:*?"<>|\p{Cc}]/gu;

/** A lesson's name in the file: its title, without what file systems refuse. */
const entryName = (lesson: ListedLesson): string => shelfTitle(lesson).replace(REFUSED, ' ').slice(0, 100);

/** A name in the file for what the register keeps, in a folder of its own. */
const registerName = (entry: unknown): string => {
  const name = isRecord(entry) && typeof entry.name === 'string' ? entry.name : '';
  const clean = name.replace(REFUSED, ' ').trim().slice(0, 100);
  return `students/${clean === '' ? 'unnamed' : clean}`;
};

/** `3 students, classes and series` */
const peopleCounted = (count: number): string =>
  counted(count, 'student, class or series', 'students, classes and series');

const NOT_LOADED =
  'What keeps the students could not be loaded. Check that the page is still reachable and load it again.';

/** The students, classes and series of this device; null where what keeps them cannot be loaded. */
const openedRegister = (): Promise<Register | null> =>
  loadRegister().then(
    ({ openRegister }) => openRegister(),
    () => null,
  );

const NOBODY_WITHIN = 'Students, classes and series are not in it.';

/**
 * Writes every lesson of this device into one file; what cannot be read goes along as it is.
 * @param students - whether students, classes and series go along
 */
export async function writeShelf(session: Session, students: boolean): Promise<Result<ShelfFile, string>> {
  const kept = await session.saveNow();
  if (!kept.ok) return kept;
  const { storage } = session;
  const listed = await storage.list();
  if (!listed.ok) return listed;
  const writer = shelfWriter();
  let written = 0;
  for (const lesson of listed.value) {
    const found = await storage.raw(lesson.id);
    if (!found.ok) return found;
    if (found.value === undefined) continue;
    writer.add(entryName(lesson), found.value);
    written += 1;
  }
  let people = NOBODY_WITHIN;
  if (students) {
    const register = await openedRegister();
    if (register === null) return failure(NOT_LOADED);
    const entries = await register.raw();
    if (!entries.ok) return entries;
    for (const entry of entries.value) writer.add(registerName(entry), entry, 'register');
    people = `${peopleCounted(entries.value.length)} ${entries.value.length === 1 ? 'is' : 'are'} in it, too, with your notes of them.`;
  }
  return success({
    parts: writer.end(),
    sentence: `${counted(written, 'lesson')} ${written === 1 ? 'is' : 'are'} in the file. ${people} Earlier states and what Undo takes back stay on this device.`,
  });
}

interface Counts {
  came: number;
  same: number;
  readonly both: string[];
  readonly unreadable: string[];
  /** Students, classes and series that are in the file. */
  readonly people: Entry[];
}

const lessonIn = (text: string): Lesson | null => {
  const read = parseLesson(text);
  return read.ok ? read.value : null;
};

function standingOf(found: FoundLesson): Lesson | 'unreadable' | null {
  if (found.kind === 'none') return null;
  return found.kind === 'lesson' ? found.lesson : 'unreadable';
}

/** Puts a lesson of a file on the shelf beside what stands there; gives a sentence where that failed. */
async function take(storage: LessonStorage, lesson: Lesson, counts: Counts): Promise<string | null> {
  const found = await storage.load(lesson.id);
  if (!found.ok) return found.problem;
  const met = meetOnShelf(lesson, standingOf(found.value));
  if (met.kind === 'same') {
    counts.same += 1;
    return null;
  }
  const taken = met.kind === 'both' ? met.lesson : lesson;
  if (met.kind === 'both') {
    const other = await storage.load(taken.id);
    if (!other.ok) return other.problem;
    if (other.value.kind !== 'none') {
      counts.same += 1;
      return null;
    }
  }
  const saved = await storage.save(taken, null, Date.now());
  if (!saved.ok)
    return saved.problem.kind === 'failed'
      ? saved.problem.sentence
      : 'It was changed in another window just now.';
  if (met.kind === 'both') counts.both.push(`“${shelfTitle(lesson)}”`);
  else counts.came += 1;
  return null;
}

const firstOf = (names: readonly string[]): string =>
  `${names.slice(0, 5).join(', ')}${names.length > 5 ? ` and ${names.length - 5} more` : ''}`;

function told({ came, same, both, unreadable }: Counts): string {
  const sentences = [`${counted(came, 'lesson')} came to the shelf.`];
  if (same > 0) sentences.push(`${counted(same, 'lesson')} stood here already, as in the file.`);
  if (both.length > 0)
    sentences.push(
      `${counted(both.length, 'lesson')} stood here in another state: both are kept, and the file’s says “(from the file)” in its title: ${firstOf(both)}.`,
    );
  if (unreadable.length > 0)
    sentences.push(
      `Left in the file, because this copy cannot read ${unreadable.length === 1 ? 'it' : 'them'}: ${firstOf(unreadable)}.`,
    );
  return sentences.join(' ');
}

function entryIn(text: string): Entry | null {
  try {
    const read = readEntry(JSON.parse(text));
    return read.ok ? read.value : null;
  } catch {
    return null;
  }
}

/** Brings students, classes and series of a file beside those that stand here, and tells what came of all. */
async function bringPeople(counts: Counts): Promise<Result<string, string>> {
  const { people } = counts;
  if (people.length === 0) return success(told(counts));
  const register = await openedRegister();
  const came = register === null ? failure(NOT_LOADED) : await register.bringIn(people);
  if (!came.ok)
    return failure(`${told(counts)} Students, classes and series of the file did not come: ${came.problem}`);
  const stood = people.length - came.value;
  return success(
    [
      told(counts),
      ...(came.value === 0 ? [] : [`${peopleCounted(came.value)} came, too.`]),
      ...(stood === 0 ? [] : [`${peopleCounted(stood)} stood here already, as in the file.`]),
    ].join(' '),
  );
}

const NO_SHELF =
  'This file is no shelf: a shelf is saved here with “Save the shelf as a file”. A single lesson is opened with Open. Nothing was changed.';
const BROKEN_OFF = 'The file is damaged from there on, so the rest of it was not read.';

/** Takes what a file of a shelf holds under a name; gives a sentence where that failed. */
async function takeEntry(
  storage: LessonStorage,
  { name, kind, text }: ShelfEntry,
  counts: Counts,
): Promise<string | null> {
  if (kind === 'register') {
    const entry = text === null ? null : entryIn(text);
    if (entry === null) counts.unreadable.push(name);
    else counts.people.push(entry);
    return null;
  }
  const lesson = text === null ? null : lessonIn(text);
  if (lesson !== null) return take(storage, lesson, counts);
  counts.unreadable.push(name);
  return null;
}

/** Brings the lessons of a shelf's file to this device. Nothing that stands here is written over. */
export async function readShelf(session: Session, bytes: Uint8Array): Promise<Result<string, string>> {
  if (!isArchive(bytes)) return failure(NO_SHELF);
  const kept = await session.saveNow();
  if (!kept.ok) return kept;
  const counts: Counts = { came: 0, same: 0, both: [], unreadable: [], people: [] };
  const entries = shelfEntries(bytes);
  for (;;) {
    let next: IteratorResult<ShelfEntry>;
    try {
      next = entries.next();
    } catch {
      return failure(`${told(counts)} ${BROKEN_OFF}`);
    }
    if (next.done === true) break;
    const problem = await takeEntry(session.storage, next.value, counts);
    if (problem !== null) return failure(`${told(counts)} The others did not come: ${problem}`);
  }
  const { came, same, both, unreadable, people } = counts;
  if (came + same + both.length + unreadable.length + people.length === 0) return failure(NO_SHELF);
  return bringPeople(counts);
}
