import { hashText, orderedText } from '../base';
import { type Lesson, parseLesson } from '../lesson';

/** How the files of lessons in a folder end. */
const ENDING = '.lesson.json';

/** What file systems refuse in names, control characters among them. */
const REFUSED = /[\\/:*?"<>|\p{Cc}]/gu;

/** Characters of a file's name before its ending. */
const LONGEST_NAME = 80;

/** A lesson as both sides had it when they were last the same. */
export interface Settled {
  /** Id of the lesson. */
  readonly id: string;
  /** Of its file in the folder. */
  readonly file: string;
  /** See {@link lessonMark}. */
  readonly mark: number;
}

/** What stands under a file's name in the folder. */
export interface FolderFile {
  readonly name: string;
  readonly lesson: Lesson;
}

/**
 * What is to be done with one lesson.
 * - `write`: the device's state goes into the folder, in place of `old` where the file gets another name
 * - `read`: the folder's state comes to the device
 * - `both`: each side was changed: the folder's comes to the device as a lesson of its own, then the device's is written
 * - `remove`: it was removed here, and its file goes, too
 * - `gone`: its file was removed elsewhere; the lesson stays here
 */
export type FolderStep =
  | { readonly kind: 'write'; readonly lesson: Lesson; readonly file: string; readonly old: string | null }
  | { readonly kind: 'read'; readonly lesson: Lesson; readonly file: string }
  | { readonly kind: 'both'; readonly here: Lesson; readonly there: Lesson; readonly file: string }
  | { readonly kind: 'remove'; readonly id: string; readonly file: string }
  | { readonly kind: 'gone'; readonly lesson: Lesson }
  | { readonly kind: 'settled'; readonly id: string; readonly file: string; readonly mark: number };

/** Two lessons of one mark hold the same, whatever the order of their fields. */
export const lessonMark = (lesson: Lesson): number => hashText(orderedText(lesson));

/** Whether a file of a folder may be a lesson, by its name. */
export const isLessonFile = (name: string): boolean => name.toLowerCase().endsWith(ENDING);

/** The lesson in a file of the folder, or null. */
export function lessonInFile(text: string): Lesson | null {
  const read = parseLesson(text);
  return read.ok ? read.value : null;
}

/** A name may not end in a dot on some systems, nor begin with one without being hidden on others. */
function withoutDots(name: string): string {
  let [from, to] = [0, name.length];
  while (from < to && name[from] === '.') from += 1;
  while (to > from && name[to - 1] === '.') to -= 1;
  return name.slice(from, to);
}

/** What a lesson's file is called: its title without what file systems refuse; told apart by a number where needed. */
export function fileNameFor(lesson: Lesson, taken: ReadonlySet<string>): string {
  const plain = withoutDots(lesson.title.replace(REFUSED, ' ').slice(0, LONGEST_NAME).trim()).trim();
  const stem = plain === '' ? 'Without a title' : plain;
  const isTaken = (name: string) => taken.has(name.toLowerCase());
  let name = `${stem}${ENDING}`;
  for (let count = 2; isTaken(name); count += 1) name = `${stem} ${count}${ENDING}`;
  return name;
}

/** Whether a file's name is one that its lesson's title makes, with or without a number. */
const isNamedAfter = (file: string, lesson: Lesson): boolean => {
  const stem = fileNameFor(lesson, new Set()).slice(0, -ENDING.length);
  const own = file.slice(0, -ENDING.length);
  return own === stem || (own.startsWith(`${stem} `) && /^\d+$/.test(own.slice(stem.length + 1)));
};

/**
 * What brings the lessons of a device and of a folder to the same state, so that nothing is written over that either
 * side changed since they were last the same.
 * @param here - the lessons of the device
 * @param there - the readable files of the folder
 * @param settled - the state in which both sides last agreed
 * @param taken - names of all files in the folder, readable or not
 */
export function folderSteps(
  here: readonly Lesson[],
  there: readonly FolderFile[],
  settled: readonly Settled[],
  taken: readonly string[],
): readonly FolderStep[] {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  const known = new Map(settled.map((each) => [each.id, each]));
  const files = filesById(there, known);
  const nameOf = (lesson: Lesson): string => {
    const name = fileNameFor(lesson, names);
    names.add(name.toLowerCase());
    return name;
  };
  const onDevice = new Set(here.map(({ id }) => id));
  return [
    ...here.flatMap((lesson) => stepHere(lesson, files.get(lesson.id), known.get(lesson.id), nameOf) ?? []),
    ...[...files.values()].flatMap((file) =>
      onDevice.has(file.lesson.id) ? [] : [stepThere(file, known.get(file.lesson.id))],
    ),
  ];
}

/** What is to be done with a lesson of the device; null where both sides agree. */
function stepHere(
  lesson: Lesson,
  file: FolderFile | undefined,
  last: Settled | undefined,
  nameOf: (lesson: Lesson) => string,
): FolderStep | null {
  const mark = lessonMark(lesson);
  if (file === undefined)
    return last?.mark === mark
      ? { kind: 'gone', lesson }
      : { kind: 'write', lesson, file: nameOf(lesson), old: null };
  const theirs = lessonMark(file.lesson);
  if (theirs === mark) {
    const isKnown = last?.mark === mark && last.file === file.name;
    return isKnown ? null : { kind: 'settled', id: lesson.id, file: file.name, mark };
  }
  if (last?.mark === mark) return { kind: 'read', lesson: file.lesson, file: file.name };
  if (last?.mark !== theirs) return { kind: 'both', here: lesson, there: file.lesson, file: file.name };
  const stays = isNamedAfter(file.name, lesson);
  return { kind: 'write', lesson, file: stays ? file.name : nameOf(lesson), old: stays ? null : file.name };
}

/** What is to be done with a file whose lesson is not on the device: it is new, or the lesson was removed here. */
const stepThere = ({ name, lesson }: FolderFile, last: Settled | undefined): FolderStep =>
  last?.mark === lessonMark(lesson)
    ? { kind: 'remove', id: lesson.id, file: name }
    : { kind: 'read', lesson, file: name };

/** One file of each lesson: a synchroniser's copy beside the known one is another state, under an id of its own. */
function filesById(
  there: readonly FolderFile[],
  known: ReadonlyMap<string, Settled>,
): ReadonlyMap<string, FolderFile> {
  const files = new Map<string, FolderFile>();
  const inOrder = there.toSorted(
    (one, other) =>
      Number(known.get(other.lesson.id)?.file === other.name) -
      Number(known.get(one.lesson.id)?.file === one.name),
  );
  for (const { name, lesson } of inOrder) {
    const first = files.get(lesson.id);
    if (first === undefined) files.set(lesson.id, { name, lesson });
    else {
      const mark = lessonMark(lesson);
      if (mark === lessonMark(first.lesson)) continue;
      const id = `${lesson.id.slice(0, 100)}-${mark.toString(16)}`;
      if (!files.has(id)) files.set(id, { name, lesson: { ...lesson, id } });
    }
  }
  return files;
}
