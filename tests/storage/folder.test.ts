import { expect, test } from 'vitest';
import { meetFolder } from '../../src/app/storage/folder/meet';
import {
  type Lesson,
  printLesson,
  sampleLesson,
  setTempo,
  setTitle,
  transposeBy,
} from '../../src/core/lesson';
import { lessonMark, type Settled } from '../../src/core/shelf';
import { LINE } from '../versions/bars';
import { device, handClock } from './device';

const HERE = sampleLesson(0, 'lesson-1');
const FILE = 'one.lesson.json';

/** A folder with one file, of which a page reads only names and texts. */
const folderWith = (lesson: Lesson): FileSystemDirectoryHandle =>
  ({
    async *entries() {
      yield [FILE, { kind: 'file', getFile: async () => new Blob([printLesson(lesson)]) }];
    },
  }) as unknown as FileSystemDirectoryHandle;

/** The same folder, where something is done while it is read; `removed` hears which files went. */
const folderWhile = (lesson: Lesson, work: () => Promise<unknown>, removed: string[] = []) =>
  Object.assign(folderWith(lesson), {
    async *entries() {
      await work();
      yield* folderWith(lesson).entries();
    },
    removeEntry: async (name: string) => void removed.push(name),
  });

const AGREED: readonly Settled[] = [{ id: HERE.id, file: FILE, mark: lessonMark(HERE) }];

/** What becomes of a lesson that was changed in the folder alone. */
async function cameFrom(change: (lesson: Lesson) => Lesson) {
  const storage = device().openWindow(handClock().clock);
  await storage.save(HERE, null, 1);
  const met = await meetFolder(storage, folderWith(change(HERE)), AGREED, new Set());
  const [now, states] = [await storage.load(HERE.id), await storage.earlierStates(HERE.id)];
  if (!now.ok || now.value.kind !== 'lesson' || !states.ok) throw new Error('It is here.');
  return { met, now: now.value.lesson, states: states.value };
}

test('what the folder brings over a lesson that stood here leaves its state before, where much is other', async () => {
  const moved = await cameFrom((lesson) => transposeBy(lesson, LINE, 5));
  expect(moved.met.changed).toEqual([HERE.id]);
  expect(moved.now).toEqual(transposeBy(HERE, LINE, 5));
  expect(moved.states).toMatchObject([{ before: 'what came from the folder', lesson: HERE }]);
  const faster = await cameFrom((lesson) => setTempo(lesson, LINE, 77));
  expect(faster.now).toEqual(setTempo(HERE, LINE, 77));
  expect(faster.states).toEqual([]);
});

test('what is written here while the folder is read is not written over by what comes from there', async () => {
  const storage = device().openWindow(handClock().clock);
  const base = await storage.save(HERE, null, 1);
  if (!base.ok) throw new Error('It is saved.');
  const typed = setTitle(HERE, 'Typed meanwhile');
  const folder = folderWhile(setTempo(HERE, LINE, 77), () => storage.save(typed, base.value, 2));
  const met = await meetFolder(storage, folder, AGREED, new Set());
  expect(await storage.load(HERE.id)).toMatchObject({ value: { lesson: typed } });
  // What was agreed on is as before, so the next look finds that both sides were changed.
  expect(met).toEqual({ settled: AGREED, changed: [], sentence: '' });
});

test('a window that changed a lesson before it knew what came from the folder meets that as another window’s', async () => {
  const storage = device().openWindow(handClock().clock);
  const base = await storage.save(HERE, null, 1);
  if (!base.ok) throw new Error('It is saved.');
  const faster = setTempo(HERE, LINE, 77);
  await meetFolder(storage, folderWith(faster), AGREED, new Set());
  expect(await storage.save(setTitle(HERE, 'Typed meanwhile'), base.value, 3)).toMatchObject({
    ok: false,
    problem: { kind: 'overtaken', by: { lesson: faster } },
  });
});

test('the file of a lesson that cannot be read on this device stays in the folder', async () => {
  const { records, openWindow } = device();
  const storage = openWindow(handClock().clock);
  records.set(HERE.id, { id: HERE.id, title: 'Damaged', savedAt: 1, document: { format: 'none' } });
  const removed: string[] = [];
  await meetFolder(
    storage,
    folderWhile(HERE, async () => null, removed),
    AGREED,
    new Set(),
  );
  expect(removed).toEqual([]);
  records.delete(HERE.id);
  await meetFolder(
    storage,
    folderWhile(HERE, async () => null, removed),
    AGREED,
    new Set(),
  );
  expect(removed).toEqual([FILE]);
});
