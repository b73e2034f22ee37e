import { counted, failure, listed, type Result, success } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import type { PacketFolder } from '../../../core/students';
import type { MakeOptions } from '../../../tracks';
import { fileOf, fileStem, type MadeFile, type PackedFile, zipOf } from '../saving';
import { type Content, filesOf, type LessonFiles, type Packed } from './packing';

/** A packet for several people. */
export interface ManyWishes {
  readonly folders: readonly PacketFolder[];
  /** Students' names may stand in it. */
  readonly named: boolean;
  readonly wanted: readonly Content[];
}

/** Bytes that a packet can have: more is neither sent nor held in a telephone's memory. */
const MOST_BYTES = 1e9;

/** The short text that says which folder holds what, and for whom where names are ticked. */
function whoHasWhat(title: string, { folders, named }: Pick<ManyWishes, 'folders' | 'named'>): string {
  const rows = folders.map(({ name, called, students }) => {
    const who = named && students.length > 0 ? `${listed(students)}: ` : '';
    return `  ${name}: ${who}${called}`;
  });
  return [
    title,
    '',
    `${counted(folders.length, 'folder')}, and what is in ${folders.length === 1 ? 'it' : 'each'}:`,
    ...rows,
    '',
    'Each folder has a text of its own that says what its files are for.',
    '',
  ].join('\r\n');
}

/** A lesson that says on paper for whom it is only where that may be said. */
export function nameless(lesson: Lesson, named: boolean): Lesson {
  if (named || lesson.handout.student === undefined) return lesson;
  const { student: _, ...handout } = lesson.handout;
  return { ...lesson, handout };
}

const sizeOf = (file: MadeFile): number => fileOf(file).size;

/**
 * Makes a packet with a folder for each student or version; null where it was called off. What several have is made
 * once.
 * @throws Error where a part of the page, a font or the empty practice page cannot be fetched
 */
export async function packetForMany(
  document: Lesson,
  { folders, named, wanted }: ManyWishes,
  { signal, onShare }: MakeOptions,
): Promise<Result<Packed | null, string>> {
  const { lessonOfVersion } = await import('../../../core/versions');
  const made = new Map<string | null, LessonFiles>();
  const versions = new Map(folders.map(({ version, called }) => [version, called]));
  for (const [version, called] of versions) {
    const before = made.size;
    const lesson = nameless(lessonOfVersion(document, version), named);
    const own = await filesOf(lesson, version === null ? '' : called, wanted, {
      signal,
      onShare: (share) => onShare((before + share) / versions.size),
    });
    if (!own.ok) return failure(own.problem);
    if (own.value === null) return success(null);
    made.set(version, own.value);
  }
  const files: readonly PackedFile[] = [
    { stem: 'who-has-what', kind: 'textTab', content: whoHasWhat(document.title, { folders, named }) },
    ...folders.flatMap(({ name, version }) =>
      (made.get(version)?.files ?? []).map((file) => ({ ...file, folder: name })),
    ),
  ];
  if (files.reduce((sum, file) => sum + sizeOf(file), 0) > MOST_BYTES)
    return failure(
      'The packet would be larger than a gigabyte, so it was not made. Untick the clip or the tracks, or the names, with which each student has a folder.',
    );
  const remarks = [...made.values()].flatMap(({ remarks: told }) => told ?? []);
  return success({
    file: { stem: fileStem(document.title), kind: 'zip', content: await zipOf(files) },
    remarks: remarks.length === 0 ? null : [...new Set(remarks)].join(' '),
  });
}
