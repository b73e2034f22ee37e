import { strFromU8, strToU8, Unzip, UnzipInflate, Zip, ZipDeflate } from 'fflate';
import { hashText, orderedText } from '../base';
import { endedTitle, type Lesson } from '../lesson';

/** A lesson's file may unpack to this, in bytes; what unpacks to more was made to harm. */
const LARGEST_ENTRY = 6_000_000;
/** Packed bytes handed to the unpacker at a time: each may grow a thousandfold before the next look at the sum. */
const PORTION = 4_096;

/** Far above any shelf: what holds more was made to harm. */
const MOST_ENTRIES = 50_000;

/** How the files in a shelf's file end: of lessons, and of the students, classes and series beside them. */
const ENDINGS = { lesson: '.lesson.json', register: '.entry.json' } as const;

/** What of the shelf an entry of its file is. */
export type ShelfEntryKind = keyof typeof ENDINGS;

/** What was found in a shelf's file under a name: its text, or null for what is too large to be a lesson. */
export interface ShelfEntry {
  readonly name: string;
  readonly kind: ShelfEntryKind;
  readonly text: string | null;
}

/**
 * Writes a shelf as one file: a ZIP archive with a lesson file for each lesson, which opens by itself, too, and a file for
 * each student, class and series where they are wanted. They are packed one by one, so that a large shelf is never in
 * memory as a whole.
 */
export function shelfWriter() {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const names = new Set<string>();
  const zip = new Zip((fault, part) => {
    if (fault) throw fault;
    parts.push(new Uint8Array(part));
  });
  return {
    /** @param stem - what the file in the archive is called, its ending left out; told apart by a number where needed */
    add(stem: string, document: unknown, kind: ShelfEntryKind = 'lesson'): void {
      const ending = ENDINGS[kind];
      let name = `${stem}${ending}`;
      for (let count = 2; names.has(name); count += 1) name = `${stem} ${count}${ending}`;
      names.add(name);
      const entry = new ZipDeflate(name, { level: 6 });
      zip.add(entry);
      entry.push(strToU8(`${JSON.stringify(document)}\n`), true);
    },
    /** The parts of the finished file, in their order. */
    end(): readonly Uint8Array<ArrayBuffer>[] {
      zip.end();
      return parts;
    },
  };
}

const isOfShelf = (name: string): boolean => /\.json$/i.test(name) && !name.startsWith('__MACOSX/');

const kindOf = (name: string): ShelfEntryKind =>
  name.toLowerCase().endsWith(ENDINGS.register) ? 'register' : 'lesson';

/**
 * What stands in a shelf's file, one by one as it is unpacked.
 * @throws the unpacker's error for bytes that are no archive, or a damaged one: what came before was whole
 */
export function* shelfEntries(zip: Uint8Array): Generator<ShelfEntry> {
  const done: ShelfEntry[] = [];
  let count = 0;
  const reader = new Unzip((file) => {
    if (!isOfShelf(file.name) || count >= MOST_ENTRIES) return;
    count += 1;
    let parts: Uint8Array[] = [];
    let size = 0;
    file.ondata = (fault, part, final) => {
      if (fault) throw fault;
      size += part.length;
      // What grows beyond any lesson is counted and not kept.
      if (size > LARGEST_ENTRY) parts = [];
      else parts.push(part);
      if (!final) return;
      done.push({
        name: file.name,
        kind: kindOf(file.name),
        text: size > LARGEST_ENTRY ? null : textOf(parts, size),
      });
      parts = [];
    };
    file.start();
  });
  reader.register(UnzipInflate);
  for (let from = 0; from < zip.length; from += PORTION) {
    reader.push(zip.subarray(from, from + PORTION), from + PORTION >= zip.length);
    yield* done.splice(0);
  }
}

function textOf(parts: readonly Uint8Array[], size: number): string {
  const bytes = new Uint8Array(size);
  let filled = 0;
  for (const part of parts) {
    bytes.set(part, filled);
    filled += part.length;
  }
  return strFromU8(bytes);
}

/** Whether bytes begin as an archive does (PKWARE, APPNOTE 4.3.7: the signature of a local file header). */
export const isArchive = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;

const OTHER = ' (from the file)';

const sameLesson = (one: Lesson, other: Lesson): boolean => orderedText(one) === orderedText(other);

/**
 * What becomes of a lesson that comes to a shelf where one of the same id may stand: it is taken as it is, or it is the
 * same, or both states are kept and it gets an id and a title of its own. The id is made of what it holds, so that the
 * same file brought in twice brings nothing the second time.
 * @param standing - null for none; `unreadable` for what this copy cannot read, which is another state
 */
export function meetOnShelf(
  theirs: Lesson,
  standing: Lesson | 'unreadable' | null,
): { readonly kind: 'new' } | { readonly kind: 'same' } | { readonly kind: 'both'; readonly lesson: Lesson } {
  if (standing === null) return { kind: 'new' };
  if (standing !== 'unreadable' && sameLesson(theirs, standing)) return { kind: 'same' };
  const id = `${theirs.id.slice(0, 100)}-${hashText(orderedText(theirs)).toString(16)}`;
  return { kind: 'both', lesson: { ...theirs, id, title: endedTitle(theirs.title, OTHER) } };
}
