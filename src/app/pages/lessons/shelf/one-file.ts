import { counted, failure, type Result, success } from '../../../../core/base';
import { type Lesson, parseLesson } from '../../../../core/lesson';
import { isArchive, meetOnShelf, type ShelfEntry, shelfEntries, shelfWriter } from '../../../../core/shelf';
import type { Session } from '../../../state';
import type { FoundLesson, LessonStorage, ListedLesson } from '../../../storage';
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

/** Writes every lesson of this device into one file; what cannot be read goes along as it is. */
export async function writeShelf(session: Session): Promise<Result<ShelfFile, string>> {
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
  return success({
    parts: writer.end(),
    sentence: `${counted(written, 'lesson')} ${written === 1 ? 'is' : 'are'} in the file. Earlier states and what Undo takes back stay on this device.`,
  });
}

interface Counts {
  came: number;
  same: number;
  readonly both: string[];
  readonly unreadable: string[];
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

const NO_SHELF =
  'This file is no shelf: a shelf is saved here with “Save the shelf as a file”. A single lesson is opened with Open. Nothing was changed.';
const BROKEN_OFF = 'The file is damaged from there on, so the rest of it was not read.';

/** Brings the lessons of a shelf's file to this device. Nothing that stands here is written over. */
export async function readShelf(session: Session, bytes: Uint8Array): Promise<Result<string, string>> {
  if (!isArchive(bytes)) return failure(NO_SHELF);
  const kept = await session.saveNow();
  if (!kept.ok) return kept;
  const counts: Counts = { came: 0, same: 0, both: [], unreadable: [] };
  const entries = shelfEntries(bytes);
  for (;;) {
    let next: IteratorResult<ShelfEntry>;
    try {
      next = entries.next();
    } catch {
      return failure(`${told(counts)} ${BROKEN_OFF}`);
    }
    if (next.done === true) break;
    const { name, text } = next.value;
    const lesson = text === null ? null : lessonIn(text);
    if (lesson === null) counts.unreadable.push(name);
    else {
      const problem = await take(session.storage, lesson, counts);
      if (problem !== null) return failure(`${told(counts)} The others did not come: ${problem}`);
    }
  }
  const { came, same, both, unreadable } = counts;
  return came + same + both.length + unreadable.length === 0 ? failure(NO_SHELF) : success(told(counts));
}
