import { counted, listed } from '../../../core/base';
import { endedTitle, type Lesson, printLesson } from '../../../core/lesson';
import {
  type FolderStep,
  folderSteps,
  isLargeChange,
  isLessonFile,
  isWorthKeeping,
  lessonInFile,
  lessonMark,
  type Settled,
} from '../../../core/shelf';
import type { LessonStorage } from '../lesson-storage';
import { removeFile, textsIn, writeText } from './handles';

/** What came of bringing a device and a folder together. */
export interface Met {
  readonly settled: readonly Settled[];
  /** Ids of lessons whose state on the device is another now. */
  readonly changed: readonly string[];
  /** What there is to say of it; empty where nothing was done. */
  readonly sentence: string;
}

const OTHER = ' (from the folder)';

/** What an earlier state was kept before, as a person reads it. */
const WHAT_CAME = 'what came from the folder';

/** Titles of lessons with what became of them, as it is told. */
interface Told {
  written: number;
  came: number;
  removed: number;
  readonly both: string[];
  readonly gone: string[];
  readonly failed: string[];
}

const titleOf = ({ title }: Lesson): string => `“${title === '' ? 'Without a title' : title}”`;

const MOST_NAMED = 5;
const named = (titles: readonly string[]): string =>
  listed([
    ...titles.slice(0, MOST_NAMED),
    ...(titles.length > MOST_NAMED ? [`${titles.length - MOST_NAMED} more`] : []),
  ]);

function sentenceOf({ written, came, removed, both, gone, failed }: Told, unread: readonly string[]): string {
  const lessons = (count: number) => counted(count, 'lesson');
  return [
    ...(written > 0 ? [`${lessons(written)} written into the folder.`] : []),
    ...(came > 0 ? [`${lessons(came)} came from the folder.`] : []),
    ...(removed > 0 ? [`${lessons(removed)} removed here went from the folder.`] : []),
    ...(both.length > 0
      ? [
          `Changed here and in the folder, so both states are kept, the folder’s with “(from the folder)” in its title: ${named(both)}.`,
        ]
      : []),
    ...(gone.length > 0 ? [`No longer in the folder, and still on this device: ${named(gone)}.`] : []),
    ...(failed.length > 0 ? [`Not brought to this device: ${named(failed)}.`] : []),
    ...(unread.length > 0
      ? [`In the folder and not readable as lessons by this copy: ${named(unread)}.`]
      : []),
  ].join(' ');
}

/** What stands on the device. */
interface Here {
  /** All lessons that can be read, with the revisions in which they were. */
  readonly here: ReadonlyMap<string, { readonly lesson: Lesson; readonly revision: string }>;
  /** Ids of those that cannot: they were not removed, and their files stay. */
  readonly unreadable: ReadonlySet<string>;
}

async function lessonsHere(storage: LessonStorage): Promise<Here | string> {
  const listedHere = await storage.list();
  if (!listedHere.ok) return listedHere.problem;
  const here = new Map<string, { readonly lesson: Lesson; readonly revision: string }>();
  const unreadable = new Set<string>();
  for (const { id } of listedHere.value) {
    const found = await storage.load(id);
    if (!found.ok) return found.problem;
    if (found.value.kind === 'lesson') here.set(id, found.value);
    else if (found.value.kind !== 'none') unreadable.add(id);
  }
  return { here, unreadable };
}

/**
 * Brings the lessons of this device and those of a folder together; nothing is written over that either side changed.
 * @param told - titles whose files were gone before, which are not told of again
 * @throws the browser's error where the folder is gone or may not be used, as a rejection
 */
export async function meetFolder(
  storage: LessonStorage,
  folder: FileSystemDirectoryHandle,
  settled: readonly Settled[],
  told: Set<string>,
): Promise<Met> {
  const found = await lessonsHere(storage);
  if (typeof found === 'string') return { settled, changed: [], sentence: found };
  const { here, unreadable } = found;
  const { texts, names, unread, unfinished } = await textsIn(folder, isLessonFile);
  const readable = [...texts].flatMap(([name, text]) => {
    const lesson = lessonInFile(text);
    return lesson === null ? [] : [{ name, lesson }];
  });
  const damaged = [
    ...unread,
    ...[...texts.keys()].filter((name) => !readable.some((file) => file.name === name)),
  ];
  // The file of a lesson that is not readable at this moment stands there all the same.
  const steps = folderSteps(
    [...here.values()].map(({ lesson }) => lesson),
    readable,
    settled,
    names,
  ).filter(
    (step) =>
      !(step.kind === 'remove' && unreadable.has(step.id)) &&
      !(
        step.kind === 'gone' &&
        [...damaged, ...unfinished].some((name) =>
          settled.some((each) => each.id === step.lesson.id && each.file === name),
        )
      ),
  );
  const agreed = new Map(settled.map((each) => [each.id, each]));
  const counts: Told = { written: 0, came: 0, removed: 0, both: [], gone: [], failed: [] };
  const changed: string[] = [];
  const settle = (lesson: Lesson, file: string) =>
    agreed.set(lesson.id, { id: lesson.id, file, mark: lessonMark(lesson) });
  const bring = async (lesson: Lesson): Promise<boolean> => {
    const mine = here.get(lesson.id)?.lesson;
    // The folder's state takes its place: what was here can be looked at and brought back.
    if (mine !== undefined && isWorthKeeping(mine) && isLargeChange(mine, lesson))
      await storage.keepState(mine, Date.now(), WHAT_CAME);
    const saved = await storage.take(lesson, here.get(lesson.id)?.revision ?? null, Date.now());
    if (saved.ok) changed.push(lesson.id);
    // What was changed here since it was read is both sides' change, which the next look meets.
    else if (saved.problem.kind === 'failed' || !here.has(lesson.id)) counts.failed.push(titleOf(lesson));
    return saved.ok;
  };
  const carryOut = async (step: FolderStep): Promise<void> => {
    switch (step.kind) {
      case 'write':
        await writeText(folder, step.file, printLesson(step.lesson));
        if (step.old !== null) await removeFile(folder, step.old);
        settle(step.lesson, step.file);
        counts.written += 1;
        return;
      case 'read':
        if (!(await bring(step.lesson))) return;
        settle(step.lesson, step.file);
        counts.came += 1;
        return;
      case 'both': {
        const theirs = {
          ...step.there,
          id: `${step.there.id.slice(0, 100)}-${lessonMark(step.there).toString(16)}`,
          title: endedTitle(step.there.title, OTHER),
        };
        if (!here.has(theirs.id) && !(await bring(theirs))) return;
        await writeText(folder, step.file, printLesson(step.here));
        settle(step.here, step.file);
        counts.both.push(titleOf(step.here));
        return;
      }
      case 'remove':
        await removeFile(folder, step.file);
        agreed.delete(step.id);
        counts.removed += 1;
        return;
      case 'gone':
        if (!told.has(step.lesson.id)) counts.gone.push(titleOf(step.lesson));
        told.add(step.lesson.id);
        return;
      case 'settled':
        agreed.set(step.id, { id: step.id, file: step.file, mark: step.mark });
    }
  };
  for (const step of steps) await carryOut(step);
  return { settled: [...agreed.values()], changed, sentence: sentenceOf(counts, damaged) };
}
