import { expect, test } from 'vitest';
import { startSession } from '../../src/app/state';
import { describeStorageFault, type LessonStorage } from '../../src/app/storage';
import { failure, success } from '../../src/core/base';
import { type Lesson, printLesson, SAMPLE_TITLES, sampleLesson, setTitle } from '../../src/core/lesson';

/** A shelf in memory whose failing can be switched on. */
function shelf() {
  const lessons = new Map<string, Lesson>();
  const state: { opened: string | null; fails: boolean } = { opened: null, fails: false };
  const attempt = async <Value>(work: () => Value) =>
    state.fails ? failure('It is full.') : success(work());
  const storage: LessonStorage = {
    list: () =>
      attempt(() => [...lessons.values()].map(({ id, title }) => ({ id, title, savedAt: 0 })).reverse()),
    load: async (id) => {
      const lesson = lessons.get(id);
      return lesson === undefined ? failure('It is gone.') : success(lesson);
    },
    save: (lesson) =>
      attempt(() => {
        lessons.set(lesson.id, lesson);
        return null;
      }),
    remove: (id) =>
      attempt(() => {
        lessons.delete(id);
        return null;
      }),
    lastOpened: () => attempt(() => state.opened),
    rememberOpened: (opened) =>
      attempt(() => {
        state.opened = opened;
        return null;
      }),
  };
  return { lessons, state, storage };
}

const start = (storage: LessonStorage) => startSession(storage, () => () => {});
type Session = Awaited<ReturnType<typeof start>>;

const title = (session: Session): string => session.lessons.getState().lesson.title;
const retitle = (session: Session, text: string): void =>
  session.lessons.change((lesson) => setTitle(lesson, text), { label: 'change the title' });

test('a lesson that cannot be saved is not put away until it is in a file', async () => {
  const { storage, state } = shelf();
  const session = await start(storage);
  retitle(session, 'Not to be lost');
  state.fails = true;
  await session.startNewLesson();
  expect(title(session)).toBe('Not to be lost');
  expect(session.editor.getState().notice).toMatch(/nothing was opened\. Save it as a file first/);
  expect(session.editor.getState().saving).toEqual({ kind: 'failed', sentence: 'It is full.' });
  expect(await session.openCopy(sampleLesson(1, 'other'))).toBe(false);
  await session.openFile(printLesson(sampleLesson(1, 'other')));
  expect(title(session)).toBe('Not to be lost');

  session.keptAsFile(session.lessons.getState().lesson);
  retitle(session, 'Changed since');
  await session.startNewLesson();
  expect(title(session)).toBe('Changed since');

  session.keptAsFile(session.lessons.getState().lesson);
  await session.startNewLesson();
  expect(title(session)).toBe('New lesson');
  session.end();
});

test('a lesson that is as it came is put away even where nothing can be saved', async () => {
  const { storage, state } = shelf();
  state.fails = true;
  const session = await start(storage);
  expect(session.editor.getState().notice).toBe('It is full.');
  await session.startNewLesson();
  expect(title(session)).toBe('New lesson');
  await session.startSample(1);
  expect(title(session)).toBe(SAMPLE_TITLES[1]);
  session.end();
});

test('a sample takes a place on the device once it is changed, and is open again either way', async () => {
  const { storage, lessons } = shelf();
  const first = await start(storage);
  await first.startSample(1);
  await first.saveNow();
  expect(lessons.size).toBe(0);
  first.end();

  const second = await start(storage);
  expect(title(second)).toBe(SAMPLE_TITLES[1]);
  retitle(second, 'My own');
  await second.saveNow();
  expect([...lessons.values()].map((lesson) => lesson.title)).toEqual(['My own']);
  second.end();

  const third = await start(storage);
  expect(title(third)).toBe('My own');
  third.end();
});

test('a lesson removed from the device is no longer listed', async () => {
  const { storage } = shelf();
  const session = await start(storage);
  await session.startNewLesson();
  const { id } = session.lessons.getState().lesson;
  await session.startNewLesson();
  expect(await session.removeSaved(id)).toEqual(success(null));
  const listed = await storage.list();
  expect(listed.ok && listed.value.map((lesson) => lesson.id)).toEqual([
    session.lessons.getState().lesson.id,
  ]);
  session.end();
});

test('a full device is told apart from one that keeps nothing', () => {
  // The name is that of the Indexed Database API and the Storage Standard.
  expect(describeStorageFault(new DOMException('', 'QuotaExceededError'))).toMatch(/is full/);
  expect(describeStorageFault(new DOMException('', 'SecurityError'))).toMatch(/private window/);
});
