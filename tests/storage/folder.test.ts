import { expect, test } from 'vitest';
import { writeText } from '../../src/app/storage/folder/handles';
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

test('a window that changed a lesson before it knew what came from the folder meets that as the folder’s', async () => {
  const storage = device().openWindow(handClock().clock);
  const base = await storage.save(HERE, null, 1);
  if (!base.ok) throw new Error('It is saved.');
  const faster = setTempo(HERE, LINE, 77);
  await meetFolder(storage, folderWith(faster), AGREED, new Set());
  const late = await storage.save(setTitle(HERE, 'Typed meanwhile'), base.value, 3);
  if (late.ok || late.problem.kind !== 'overtaken') throw new Error('It is behind.');
  expect(late.problem.by).toMatchObject({ lesson: faster });
  expect(storage.madeWhere(late.problem.by.revision)).toBe('in the folder');
  expect(storage.madeWhere(base.value)).toBe('in another window');
});

/** A folder that writes like a browser's: a new file is empty until it is closed. `seen` is asked after every step. */
function diskFolder(
  moves: 'moves' | 'refuses' | 'knows no moving',
  seen: (files: Map<string, string>) => void,
) {
  const files = new Map<string, string>();
  const step = (work: () => unknown) => {
    work();
    seen(files);
  };
  const handleOf = (name: string) => ({
    createWritable: async () => {
      let text = '';
      return {
        write: async (more: string) => step(() => (text += more)),
        close: async () => step(() => files.set(name, text)),
      };
    },
    ...(moves === 'knows no moving'
      ? {}
      : {
          move: async (to: string) => {
            if (moves === 'refuses') throw new DOMException('', 'NotAllowedError');
            step(() => {
              files.set(to, files.get(name) ?? '');
              files.delete(name);
            });
          },
        }),
  });
  const folder = {
    getFileHandle: async (name: string, { create = false } = {}) => {
      if (!files.has(name) && !create) throw new DOMException('', 'NotFoundError');
      if (!files.has(name)) step(() => files.set(name, ''));
      return handleOf(name);
    },
    removeEntry: async (name: string) => step(() => files.delete(name)),
  };
  return { folder: folder as unknown as FileSystemDirectoryHandle, files };
}

test.each(['moves', 'refuses', 'knows no moving'] as const)(
  'a new file holds its lesson as soon as it bears its name, where the browser %s files, and nothing else is left',
  async (moves) => {
    const empty: boolean[] = [];
    const { folder, files } = diskFolder(moves, (now) => empty.push(now.get(FILE) === ''));
    for (const text of ['first', 'second']) {
      await writeText(folder, FILE, text);
      expect([...files]).toEqual([[FILE, text]]);
    }
    await writeText(folder, 'two.lesson.json', 'other');
    expect(files.size).toBe(2);
    expect(empty.includes(true)).toBe(moves !== 'moves');
  },
);

test('a file that is empty as yet is neither told as unreadable nor as gone', async () => {
  const storage = device().openWindow(handClock().clock);
  await storage.save(HERE, null, 1);
  const folder = {
    async *entries() {
      yield [FILE, { kind: 'file', getFile: async () => new Blob([]) }];
    },
  } as unknown as FileSystemDirectoryHandle;
  const met = await meetFolder(storage, folder, AGREED, new Set());
  expect(met).toEqual({ settled: AGREED, changed: [], sentence: '' });
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
