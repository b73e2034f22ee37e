import { describe, expect, test } from 'vitest';
import { failure, success } from '../../src/core/base';
import {
  LESSON_VERSION,
  type Lesson,
  parseLesson,
  printLesson,
  sampleLesson,
  setTitle,
} from '../../src/core/lesson';
import { factsOf } from '../../src/core/shelf';
import { device, handClock } from './device';

const LESSON = setTitle(sampleLesson(0, 'lesson-1'), 'Ferry queue');
const called = (title: string): Lesson => setTitle(LESSON, title);

/** A device with two windows on it whose time the test holds. */
function atHand() {
  const shared = device();
  const time = handClock();
  const [storage, other] = [shared.openWindow(time.clock), shared.openWindow(time.clock)];
  return { ...shared, ...time, storage, other };
}

type Saving = ReturnType<ReturnType<typeof atHand>['storage']['save']>;

async function revisionOf(saving: Saving): Promise<string> {
  const saved = await saving;
  if (!saved.ok) throw new Error('It was not saved.');
  return saved.value;
}

const titleOf = (record: unknown): unknown => (record as { readonly title: unknown } | undefined)?.title;

describe('two windows', () => {
  test('a state that another window wrote meanwhile is not written over but given back', async () => {
    const { storage, other, records } = atHand();
    const first = await revisionOf(storage.save(LESSON, null, 1));
    const theirs = await revisionOf(other.save(called('Theirs'), first, 2));
    expect(theirs).not.toBe(first);
    expect(await storage.save(called('Mine'), first, 3)).toEqual(
      failure({ kind: 'overtaken', by: { kind: 'lesson', lesson: called('Theirs'), revision: theirs } }),
    );
    expect(titleOf(records.get(LESSON.id))).toBe('Theirs');
    expect(await storage.save(called('Mine'), theirs, 4)).toMatchObject({ ok: true });
  });

  test('a window is not behind what it wrote itself, also when it did not learn that it was written', async () => {
    const { storage, records } = atHand();
    await storage.save(LESSON, null, 1);
    expect(await storage.save(called('Later'), null, 2)).toMatchObject({ ok: true });
    expect(titleOf(records.get(LESSON.id))).toBe('Later');
  });

  test('a record of an earlier copy, which names no revision, is known by its time', async () => {
    const { storage, records } = atHand();
    const record = { id: LESSON.id, title: LESSON.title, savedAt: 5, document: LESSON };
    records.set(LESSON.id, record);
    const found = await storage.load(LESSON.id);
    const base = found.ok && found.value.kind === 'lesson' ? found.value.revision : null;
    records.set(LESSON.id, { ...record, savedAt: 6 });
    expect(await storage.save(called('Mine'), base, 7)).toMatchObject({ problem: { kind: 'overtaken' } });
    records.set(LESSON.id, record);
    expect(await storage.save(called('Mine'), base, 7)).toMatchObject({ ok: true });
  });

  test('a lesson of a newer copy is never written over, whatever revision it has', async () => {
    const { storage, records } = atHand();
    const newer = { ...LESSON, version: LESSON_VERSION + 1, more: 'than this copy knows' };
    const record = { id: LESSON.id, title: 'Newer', savedAt: 1, revision: 'r', document: newer };
    records.set(LESSON.id, record);
    expect(await storage.save(LESSON, 'r', 2)).toMatchObject({ problem: { kind: 'overtaken' } });
    expect(records.get(LESSON.id)).toEqual(record);
  });

  test('each hears what the other saves and removes, and not what it does itself', async () => {
    const { storage, other } = atHand();
    const [here, there]: [unknown[], unknown[]] = [[], []];
    storage.watch((news) => here.push(news));
    other.watch((news) => there.push(news));
    const revision = await revisionOf(storage.save(LESSON, null, 1));
    await storage.remove(LESSON.id);
    expect(there).toEqual([
      { kind: 'saved', id: LESSON.id, revision },
      { kind: 'removed', id: LESSON.id },
    ]);
    expect(here).toEqual([]);
  });
});

describe('records that are not as they were stored', () => {
  const good = { id: 'good', title: 'Good', savedAt: 10, revision: 'r', document: { ...LESSON, id: 'good' } };
  const bad: readonly (readonly [what: string, record: unknown])[] = [
    ['a time that is a text', { ...good, savedAt: 'yesterday' }],
    ['a time that is no date', { ...good, savedAt: 1e300 }],
    ['a time that is not a number', { ...good, savedAt: Number.NaN }],
    ['a title that is an object', { ...good, title: { toString: null } }],
    ['no document', { id: 'bad', title: 'Empty', savedAt: 1 }],
    ['a damaged document', { ...good, document: { ...LESSON, pieces: 'none' } }],
    [
      'a document of a newer copy',
      { ...good, document: { ...LESSON, version: LESSON_VERSION + 1, pieces: [] } },
    ],
    ['a number', 42],
    ['nothing', null],
  ];

  test.each(bad)(
    '%s: the rest of the list stands, and it can be saved as a file and removed',
    async (_, record) => {
      const { storage, records } = atHand();
      records.set('good', good);
      records.set('bad', record);
      const listed = await storage.list();
      expect(listed).toEqual(
        success([
          {
            id: 'good',
            title: 'Good',
            readable: true,
            savedAt: 10,
            usedAt: 10,
            facts: factsOf(good.document),
          },
          {
            id: 'bad',
            title: expect.any(String),
            readable: false,
            sentence: expect.stringMatching(/^\S.*\.$/),
          },
        ]),
      );
      expect(await storage.raw('bad')).toMatchObject({ ok: true });
      expect(await storage.remove('bad')).toMatchObject({ value: { id: 'bad' } });
      expect(await storage.list()).toMatchObject({ value: [{ id: 'good' }] });
    },
  );

  test('the file of one that is only damaged beside its lesson opens', async () => {
    const { storage, records } = atHand();
    records.set('bad', { ...good, savedAt: 1e300 });
    const raw = await storage.raw('bad');
    expect(parseLesson(JSON.stringify(raw.ok ? raw.value : null))).toEqual(success(good.document));
  });

  test('one that the browser itself cannot read takes none of the others along', async () => {
    const { storage, records, unreadable } = atHand();
    records.set('good', good);
    records.set('bad', good);
    unreadable.add('bad');
    expect(await storage.list()).toMatchObject({
      value: [
        { id: 'good', readable: true },
        { id: 'bad', readable: false },
      ],
    });
  });

  test('a note of what was open that is no name is none', async () => {
    const { storage, settings } = atHand();
    settings.set('last opened', { a: 1 });
    expect(await storage.loadLast()).toEqual(success({ name: null, found: { kind: 'none' } }));
  });
});

test('nothing is written that could not be read again, and the sentence says where', async () => {
  const { storage, records } = atHand();
  const grown = { ...LESSON, title: 'x'.repeat(10_000) };
  expect(parseLesson(printLesson(grown))).toMatchObject({ ok: false });
  expect(await storage.save(grown, null, 1)).toEqual(
    failure({ kind: 'failed', sentence: expect.stringMatching(/could not be opened again: title, /) }),
  );
  expect(records.size).toBe(0);
});

test('the browser is asked to keep the lessons once one is on the device', async () => {
  const { storage, keeping, state } = atHand();
  await storage.list();
  await storage.rememberOpened('sample 0');
  state.mood = 'is full';
  await storage.save(LESSON, null, 1);
  expect(keeping.asked).toBe(0);
  state.mood = 'works';
  await storage.save(LESSON, null, 1);
  expect(keeping.asked).toBe(1);
});

describe('a storage that never answers', () => {
  test.each(['opens never', 'ends no transaction'] as const)(
    'that %s is given three seconds; then everything fails at once with a sentence, and by and by it is tried again',
    async (mood) => {
      const { storage, state, pass, settle, letGo } = atHand();
      const news: unknown[] = [];
      storage.watch((each) => news.push(each));
      state.mood = mood;
      let answer: unknown = null;
      void storage.loadLast().then((result) => {
        answer = result;
      });
      await pass(2999);
      expect(answer).toBeNull();
      await pass(1);
      expect(answer).toEqual(
        failure(expect.stringMatching(/not answered for three seconds.*lesson as a file/)),
      );

      // Nobody waits another three seconds for what is known.
      expect(await storage.list()).toMatchObject({ ok: false });
      expect(await storage.save(LESSON, null, 1)).toMatchObject({ problem: { kind: 'failed' } });

      state.mood = 'works';
      await pass(5000);
      expect(await storage.save(LESSON, null, 1)).toMatchObject({ ok: true });
      expect(news).toEqual([{ kind: 'back' }]);
      letGo();
      await settle();
      expect(news).toHaveLength(1);
    },
  );

  test('and answers after all is back at once, and what it wrote late is not taken for another window', async () => {
    const { storage, state, pass, settle, letGo, records } = atHand();
    const news: unknown[] = [];
    storage.watch((each) => news.push(each));
    state.mood = 'ends no transaction';
    const late = storage.save(LESSON, null, 1);
    await pass(3000);
    expect(await late).toMatchObject({ problem: { kind: 'failed' } });
    state.mood = 'works';
    letGo();
    await settle();
    expect(records.size).toBe(1);
    expect(news).toEqual([{ kind: 'back' }]);
    expect(await storage.save(called('Later'), null, 2)).toMatchObject({ ok: true });
  });
});

describe('a storage that refuses', () => {
  test.each([
    ['is newer', /newer Ground Bass/],
    ['refuses', /private window/],
  ] as const)('because it %s says so', async (mood, sentence) => {
    const { storage, state } = atHand();
    state.mood = mood;
    expect(await storage.list()).toEqual(failure(expect.stringMatching(sentence)));
    state.mood = 'works';
    expect(await storage.list()).toEqual(success([]));
  });

  test('because it is full says so', async () => {
    const { storage, state } = atHand();
    state.mood = 'is full';
    expect(await storage.save(LESSON, null, 1)).toEqual(
      failure({ kind: 'failed', sentence: expect.stringMatching(/is full/) }),
    );
  });

  test('because it was closed under the page is opened again at once', async () => {
    const { storage, clear, state } = atHand();
    const news: unknown[] = [];
    storage.watch((each) => news.push(each));
    await storage.save(LESSON, null, 1);
    clear();
    expect(news).toEqual([{ kind: 'lost' }]);
    expect(await storage.save(LESSON, null, 2)).toMatchObject({ ok: true });
    expect(state.opened).toBe(2);
  });

  test.each([0, 3])(
    'because it was cleared while it was at work is opened again, though it refuses %i times',
    async (refusals) => {
      const { storage, clearUnderWay, state, settle, pass, records } = atHand();
      const news: unknown[] = [];
      storage.watch((each) => news.push(each));
      await storage.save(LESSON, null, 1);
      state.mood = 'ends no transaction';
      const late = storage.writeHistory(LESSON.id, 'steps');
      await settle();
      await clearUnderWay(settle, refusals);
      await pass(2000);
      expect(await late).toMatchObject({ ok: true });
      expect(records.size).toBe(0);
      expect(news).toContainEqual({ kind: 'lost' });
    },
  );

  test('because nothing can be done with its database any more is left alone after some time', async () => {
    const { storage, state, pass } = atHand();
    await storage.save(LESSON, null, 1);
    state.mood = 'aborts';
    const news: unknown[] = [];
    storage.watch((each) => news.push(each));
    const late = storage.save(called('Later'), null, 2);
    await pass(2000);
    expect(await late).toMatchObject({ ok: false });
    const { opened } = state;
    await pass(60_000);
    expect(state.opened).toBe(opened);
    expect(news).toEqual([]);
    state.mood = 'works';
    expect(await storage.load(LESSON.id)).toMatchObject({ ok: true });
    expect(news).toEqual([{ kind: 'lost' }]);
  });

  test('and without a word about it, as well', async () => {
    const { storage, closeUnawares, state } = atHand();
    await storage.save(LESSON, null, 1);
    closeUnawares();
    expect(await storage.save(LESSON, null, 2)).toMatchObject({ ok: true });
    expect(state.opened).toBe(2);
  });
});
