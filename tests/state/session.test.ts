import { expect, test } from 'vitest';
import { pageClock } from '../../src/app/clock';
import { startSession } from '../../src/app/state';
import type { LessonStorage } from '../../src/app/storage';
import { describeStorageFault } from '../../src/app/storage/faults';
import { bpm, failure, success } from '../../src/core/base';
import {
  addPiece,
  LESSON_VERSION,
  type Lesson,
  parseLesson,
  printLesson,
  SAMPLE_TITLES,
  sampleLesson,
  setTitle,
} from '../../src/core/lesson';
import { device } from '../storage/device';

/** A device with a window on it. */
function shelf() {
  const { records, state, openWindow } = device();
  return { records, state, storage: openWindow(pageClock) };
}

const noAnswer = async () => failure('failed' as const);
const NO_COMPOSER = {
  compose: noAnswer,
  check: noAnswer,
  brought: noAnswer,
  repair: noAnswer,
  explain: noAnswer,
  rankTakes: noAnswer,
  regrade: noAnswer,
  keysFor: noAnswer,
};

const start = (storage: LessonStorage, composer: Parameters<typeof startSession>[1] = NO_COMPOSER) =>
  startSession(storage, composer, { watch: () => () => {} });
type Session = Awaited<ReturnType<typeof start>>;

const title = (session: Session): string => session.lessons.getState().lesson.title;
const retitle = (session: Session, text: string): void =>
  session.lessons.change((lesson) => setTitle(lesson, text), { label: 'change the title' });

test('a lesson that cannot be saved is not put away until it is in a file', async () => {
  const { storage, state } = shelf();
  const session = await start(storage);
  retitle(session, 'Not to be lost');
  state.mood = 'is full';
  await session.startNewLesson();
  expect(title(session)).toBe('Not to be lost');
  expect(session.editor.getState().notice).toMatch(/nothing was opened\. Save it as a file first/);
  expect(session.editor.getState().saving).toEqual({
    kind: 'failed',
    sentence: expect.stringMatching(/is full/),
  });
  expect(await session.openCopy(sampleLesson(1, 'other'))).toBe(false);
  await session.openRead(parseLesson(printLesson(sampleLesson(1, 'other'))));
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

test('what stands over the page goes before a copy is on it, and only where nothing is in the way', async () => {
  const { storage, state, records } = shelf();
  const session = await start(storage);
  const seen: string[] = [];
  session.lessons.subscribe(({ lesson }) => seen.push(lesson.title));
  const kept: string[] = [];
  const copy = setTitle(sampleLesson(1, 'other'), 'A copy');
  const opening = session.openCopy(copy, () => {
    kept.push(...records.keys());
    seen.push('out of the way');
  });
  expect(await opening).toBe(true);
  expect(seen.slice(0, 2)).toEqual(['out of the way', 'A copy']);
  expect(kept).not.toContain(session.lessons.getState().lesson.id);

  retitle(session, 'Not to be lost');
  state.mood = 'is full';
  seen.length = 0;
  expect(await session.openCopy(copy, () => seen.push('out of the way'))).toBe(false);
  expect(seen).toEqual([]);
  session.end();
});

test('a lesson that is as it came is put away even where nothing can be saved', async () => {
  const { storage, state } = shelf();
  state.mood = 'refuses';
  const session = await start(storage);
  expect(session.editor.getState().saving).toMatchObject({
    kind: 'failed',
    sentence: expect.stringMatching(/private window/),
  });
  await session.startNewLesson();
  expect(title(session)).toBe('New lesson');
  await session.startSample(1);
  expect(title(session)).toBe(SAMPLE_TITLES[1]);
  session.end();
});

test('a sample takes a place on the device once it is changed, and is open again either way', async () => {
  const { storage, records } = shelf();
  const first = await start(storage);
  await first.startSample(1);
  await first.saveNow();
  expect(records.size).toBe(0);
  first.end();

  const second = await start(storage);
  expect(title(second)).toBe(SAMPLE_TITLES[1]);
  retitle(second, 'My own');
  await second.saveNow();
  expect([...records.values()]).toMatchObject([{ title: 'My own' }]);
  second.end();

  const third = await start(storage);
  expect(title(third)).toBe('My own');
  third.end();
});

test('a lesson removed from the device is no longer listed, and can be put back while the page stands', async () => {
  const { storage } = shelf();
  const session = await start(storage);
  await session.startNewLesson();
  const { id } = session.lessons.getState().lesson;
  await session.startNewLesson();
  expect(await session.removeSaved(id)).toMatchObject({ ok: true });
  const listed = await storage.list();
  expect(listed.ok && listed.value.map((lesson) => lesson.id)).toEqual([
    session.lessons.getState().lesson.id,
  ]);
  const [removed] = session.editor.getState().removed;
  if (removed === undefined) throw new Error('The session holds it.');
  expect(removed.title).toBe('New lesson');
  expect(await session.putBack(removed)).toEqual(success(true));
  expect(session.editor.getState().removed).toEqual([]);
  expect(await storage.load(id)).toMatchObject({ value: { kind: 'lesson' } });
  session.end();
});

test('a full device is told apart from one that keeps nothing', () => {
  // The name is that of the Indexed Database API and the Storage Standard.
  expect(describeStorageFault(new DOMException('', 'QuotaExceededError'))).toMatch(/is full/);
  expect(describeStorageFault(new DOMException('', 'SecurityError'))).toMatch(/private window/);
});

/** A composer that answers when it is told to, with another title for the lesson it was asked with. */
function patientComposer() {
  const asked: (() => void)[] = [];
  const compose = (_: string, lesson: Lesson, __: string, signal: AbortSignal) =>
    new Promise<ReturnType<typeof success<{ lesson: Lesson; remarks: readonly string[] }>>>((resolve) => {
      asked.push(() => {
        const title = `${lesson.title}, ${signal.aborted ? 'too late' : 'composed'}`;
        resolve(success({ lesson: structuredClone({ ...lesson, title }), remarks: ['It fits.'] }));
      });
    });
  return { asked, composer: { ...NO_COMPOSER, compose } };
}

test('a lesson that changes while it is composed is composed anew, and nothing of the change is lost', async () => {
  const { asked, composer } = patientComposer();
  const session = await start(shelf().storage, composer);
  const { pieces } = session.lessons.getState().lesson;
  const composing = session.composeLine();
  retitle(session, 'Typed meanwhile');
  asked[0]?.();
  await expect.poll(() => asked.length).toBe(2);
  expect(title(session)).toBe('Typed meanwhile');
  asked[1]?.();
  await composing;
  expect(title(session)).toBe('Typed meanwhile, composed');
  expect(session.lessons.getState().lesson.pieces, 'what is the same is not kept twice').toBe(pieces);
  expect(session.editor.getState().remarks).toEqual(['It fits.']);
  expect(session.lessons.getState().undoLabel).toBe('compose line');
  session.lessons.undo();
  expect(title(session)).toBe('Typed meanwhile');
  session.end();
});

test('composing that is called off, or whose lesson was put away, changes nothing', async () => {
  const { asked, composer } = patientComposer();
  const session = await start(shelf().storage, composer);
  const stop = new AbortController();
  const before = title(session);
  const takes = session.severalTakes(stop.signal);
  stop.abort();
  asked[0]?.();
  await takes;
  expect(title(session)).toBe(before);

  const composing = session.composeLine();
  await session.startNewLesson();
  asked[1]?.();
  await composing;
  expect(title(session)).toBe('New lesson');
  expect(asked).toHaveLength(2);
  session.end();
});

test('composing goes on when a change that overtook it is undone before it answers', async () => {
  const asked: (() => void)[] = [];
  const session = await start(shelf().storage, {
    ...NO_COMPOSER,
    compose: (_, lesson, __, signal) =>
      new Promise((resolve) => {
        const composed = success({ lesson: setTitle(lesson, 'Composed'), remarks: [] });
        asked.push(() => resolve(signal.aborted ? failure('called off') : composed));
      }),
  });
  const composing = session.composeLine();
  retitle(session, 'A slip');
  session.lessons.undo();
  asked[0]?.();
  await expect.poll(() => asked.length).toBe(2);
  asked[1]?.();
  await composing;
  expect(title(session)).toBe('Composed');
  expect(session.editor.getState().notice).toBeNull();
  session.end();
});

test('what is to be said of a line is not said of another piece', async () => {
  const { asked, composer } = patientComposer();
  const session = await start(shelf().storage, composer);
  session.lessons.change((lesson) => addPiece(lesson, 'line', null), { label: 'add a piece' });
  const composing = session.composeLine();
  const { pieces } = session.lessons.getState().lesson;
  session.choosePiece(pieces[1]?.id ?? '');
  asked[0]?.();
  await composing;
  expect(title(session)).toMatch(/composed$/);
  expect(session.editor.getState().remarks).toEqual([]);
  session.end();
});

test('a composer that no longer answers leaves the line, and a sentence says that it can be asked again', async () => {
  const session = await start(shelf().storage, {
    ...NO_COMPOSER,
    compose: async () => failure('silent'),
  });
  const before = session.lessons.getState().lesson;
  await session.composeLine();
  expect(session.lessons.getState().lesson).toBe(before);
  expect(session.editor.getState().notice).toMatch(/no longer answered.*Ask once more/);
  expect(session.editor.getState().composing).toBeNull();
  session.end();
});

test('without a composer the line stays and a sentence says so', async () => {
  const session = await start(shelf().storage);
  const before = session.lessons.getState().lesson;
  await session.composeLine();
  expect(session.lessons.getState().lesson).toBe(before);
  expect(session.editor.getState().notice).toMatch(/^The composer could not be loaded/);
  session.end();
});

test('a lesson of a newer copy is only shown: read, played and printed, and kept once a copy is made', async () => {
  const { records, openWindow } = device();
  const document = {
    ...JSON.parse(printLesson(sampleLesson(0, 'newer-1'))),
    version: LESSON_VERSION + 1,
    mood: 'calm',
  };
  const record = { id: 'newer-1', title: 'Newer', savedAt: 5, revision: 'r', document };
  records.set('newer-1', record);
  const session = await start(openWindow(pageClock));
  await session.openSaved('newer-1');
  expect(title(session)).toBe(sampleLesson(0, 'x').title);
  expect(session.editor.getState().reading?.sentences.join(' ')).toMatch(/newer Ground Bass.*mood/);
  expect(session.editor.getState().reading?.only).toMatchObject({ isReduced: true, whole: document });
  await session.saveNow();
  expect([...records.keys()]).toEqual(['newer-1']);
  expect(session.editor.getState().saving.kind).toBe('shown');

  retitle(session, 'Changed');
  expect(title(session)).toBe(sampleLesson(0, 'x').title);
  expect(session.editor.getState().notice).toMatch(/only shown here.*Make a copy/);
  session.lessons.change((lesson) => ({ ...lesson, handout: { ...lesson.handout, paper: 'Letter' } }), {
    label: 'paper',
  });
  session.lessons.change(
    (lesson) => ({
      ...lesson,
      pieces: lesson.pieces.map((piece) => (piece.kind === 'line' ? { ...piece, tempo: bpm(77) } : piece)),
    }),
    { label: 'tempo' },
  );
  await session.saveNow();
  expect(session.lessons.getState().lesson).toMatchObject({
    handout: { paper: 'Letter' },
    pieces: [{ tempo: 77 }, {}],
  });
  expect([...records.keys()]).toEqual(['newer-1']);
  expect(session.editor.getState().saving.kind).toBe('shown');

  session.editor.getState().reading?.only?.makeCopy();
  retitle(session, 'A copy');
  await session.saveNow();
  expect(session.editor.getState()).toMatchObject({ reading: null, notice: null, saving: { kind: 'saved' } });
  expect(title(session)).toBe('A copy');
  expect(records.get('newer-1')).toBe(record);
  expect([...records.keys()]).toHaveLength(2);
  session.end();
});
