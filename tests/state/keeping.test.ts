import { describe, expect, test, vi } from 'vitest';
import { startSession } from '../../src/app/state';
import { failure } from '../../src/core/base';
import { type Lesson, sampleLesson, setNotes, setTitle } from '../../src/core/lesson';
import { device, handClock } from '../storage/device';

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

/** A device, and windows on it that the test types into. */
function atHand() {
  const shared = device();
  const time = handClock();
  const openWindow = async (options: Parameters<typeof shared.openWindow>[1] = {}) => {
    let page = { leave: () => {}, comeBack: () => {} };
    const starting = startSession(shared.openWindow(time.clock, options), NO_COMPOSER, {
      clock: time.clock,
      watch: (on) => {
        page = on;
        return () => {};
      },
    });
    await time.settle();
    return { starting, comeBack: () => page.comeBack(), leave: () => page.leave() };
  };
  const open = async (options: Parameters<typeof openWindow>[0] = {}) => {
    const { starting, ...page } = await openWindow(options);
    const session = await starting;
    // As the page does when it has come.
    session.prepareSaving();
    await vi.dynamicImportSettled();
    const lesson = (): Lesson => session.lessons.getState().lesson;
    return {
      ...page,
      session,
      lesson,
      editor: () => session.editor.getState(),
      title: (text: string) => session.lessons.change((each) => setTitle(each, text), { label: 'title' }),
      notes: (text: string) => session.lessons.change((each) => setNotes(each, text), { label: 'notes' }),
    };
  };
  const stored = (): readonly Lesson[] =>
    [...shared.records.values()].map((record) => (record as { readonly document: Lesson }).document);
  return { ...shared, ...time, openWindow, open, stored };
}

/** A device with two windows that show the same lesson, which stands on it. */
async function twoWindows(options: { readonly deaf?: boolean } = {}) {
  const shared = atHand();
  const one = await shared.open(options);
  await one.session.startNewLesson();
  one.title('Ferry queue');
  await shared.pass(1000);
  const other = await shared.open(options);
  expect(other.lesson()).toEqual(one.lesson());
  return { ...shared, one, other };
}

describe('two windows on one lesson', () => {
  test('the one without changes of its own follows at once, and can take it back', async () => {
    const { one, other, pass, stored } = await twoWindows();
    one.title('Changed in one');
    await pass(1000);
    expect(other.lesson()).toEqual(one.lesson());
    expect(other.editor().saving).toEqual({ kind: 'saved' });
    one.notes('And more');
    await pass(1000);
    expect(other.lesson().notes).toBe('And more');
    expect(stored()).toEqual([one.lesson()]);

    expect(other.session.lessons.getState().undoLabel).toBe('the change in another window');
    other.session.lessons.undo();
    await pass(1000);
    expect(other.lesson().title).toBe('Ferry queue');
    expect(one.lesson().title).toBe('Ferry queue');
    expect(stored()).toHaveLength(1);
  });

  test('while both type, both states are kept as two lessons, and a sentence says so', async () => {
    const { one, other, pass, stored, settings } = await twoWindows();
    const shared = one.lesson().id;
    for (let key = 0; key < 10; key += 1) {
      one.notes(`one ${key}`);
      other.notes(`other ${key}`);
      await pass(80);
    }
    await pass(2000);
    expect(stored()).toHaveLength(2);
    expect(new Set(stored())).toEqual(new Set([one.lesson(), other.lesson()]));
    expect([one.lesson().notes, other.lesson().notes]).toEqual(['one 9', 'other 9']);
    const apart = [one, other].filter(({ lesson }) => lesson().id !== shared);
    expect(apart).toHaveLength(1);
    expect(apart[0]?.lesson().title).toBe('Ferry queue (second window)');
    expect(apart[0]?.editor().notice).toMatch(
      /Both are kept: .*“Ferry queue \(second window\)”.* is “Ferry queue”/,
    );
    expect(apart[0]?.editor().saving).toEqual({ kind: 'saved' });
    expect(settings.get('last opened')).toMatch(/^lesson-/);

    // What is taken back in the lesson of its own stays in it.
    const own = apart[0]?.lesson().id;
    for (let step = 0; step < 20; step += 1) apart[0]?.session.lessons.undo();
    await pass(1000);
    expect(apart[0]?.lesson().id).toBe(own);
    expect(stored()).toHaveLength(2);
    expect(new Set(stored())).toEqual(new Set([one.lesson(), other.lesson()]));
  });

  test('with versions: what each window changes in another version is kept, the versions of neither are lost', async () => {
    const { one, other, pass, stored } = await twoWindows();
    const versions = await import('../../src/core/versions');
    const { addVersion, lessonOfVersion, openVersion } = versions;
    one.session.lessons.knowVersions(versions);
    one.session.lessons.changeDocument((each) => addVersion(addVersion(each, 'for Ada'), 'for Ben'), {
      label: 'versions',
    });
    await pass(1000);
    const [ada, ben] = one.session.lessons.getState().document.versions ?? [];
    if (ada === undefined || ben === undefined) throw new Error('There are two versions.');
    for (const [window, id] of [
      [one, ada.id],
      [other, ben.id],
    ] as const) {
      window.session.lessons.changeDocument((each) => openVersion(each, id), null);
    }
    await pass(1000);
    one.notes('slower, Ada');
    other.notes('louder, Ben');
    await pass(2000);
    const kept = stored().map((document) => [ada, ben].map(({ id }) => lessonOfVersion(document, id).notes));
    expect(kept.map(([notes]) => notes)).toContain('slower, Ada');
    expect(kept.map(([, notes]) => notes)).toContain('louder, Ben');
    for (const document of stored())
      expect(document.versions?.map(({ name }) => name)).toEqual(['for Ada', 'for Ben']);
  });

  test('a title that is being typed in both stays as it is typed', async () => {
    const { one, other, pass, stored } = await twoWindows();
    for (let key = 1; key < 6; key += 1) {
      one.title('Morning'.slice(0, key));
      other.title('Evening'.slice(0, key));
      await pass(200);
    }
    await pass(1000);
    expect(
      stored()
        .map(({ title }) => title)
        .sort(),
    ).toEqual(['Eveni', 'Morni']);
  });

  test('who heard nothing learns of it when it saves, or when it comes to the front', async () => {
    const { one, other, pass, settle, stored } = await twoWindows({ deaf: true });
    one.title('Changed in one');
    await pass(1000);
    expect(other.lesson().title).toBe('Ferry queue');
    other.comeBack();
    await settle();
    expect(other.lesson().title).toBe('Changed in one');

    one.title('Changed again');
    await pass(1000);
    other.notes('Not knowing of it');
    await pass(1000);
    expect(stored()).toHaveLength(2);
    expect(other.editor().notice).toMatch(/Both are kept/);
  });

  test('what came from the folder is called so, not another window’s', async () => {
    const { one, other, pass, settle, stored } = await twoWindows();
    const { storage } = one.session;
    const takeIn = async (lesson: Lesson) => {
      const found = await storage.load(lesson.id);
      if (!found.ok || found.value.kind === 'none') throw new Error('It is here.');
      await storage.take(lesson, found.value.revision, 1);
    };
    await takeIn({ ...one.lesson(), notes: 'From the folder' });
    await settle();
    expect(other.lesson().notes).toBe('From the folder');
    expect(other.session.lessons.getState().undoLabel).toBe('the change in the folder');
    other.notes('Not knowing of it');
    await takeIn({ ...one.lesson(), notes: 'Once more' });
    await pass(1000);
    expect(stored()).toHaveLength(2);
    expect(other.editor().notice).toBe(
      'This lesson was changed in the folder while it was changed here. Both are kept: this window goes on with “Ferry queue (changed here)”, and the other state is “Ferry queue”, in Lessons.',
    );
  });

  test('the same change in both is no reason to part', async () => {
    const { one, other, pass, stored } = await twoWindows();
    one.notes('The same');
    other.notes('The same');
    await pass(1000);
    expect(stored()).toEqual([one.lesson()]);
    expect(other.lesson()).toEqual(one.lesson());
    expect(other.editor().notice).toBeNull();
  });

  test('a lesson removed in the other is not said to be saved, and is kept again with the next change', async () => {
    const { one, other, pass, stored } = await twoWindows();
    await one.session.startNewLesson();
    await one.session.removeSaved(other.lesson().id);
    await pass(1000);
    expect(other.editor().saving).toMatchObject({
      kind: 'failed',
      sentence: expect.stringMatching(/removed from this device in another window/),
    });
    other.comeBack();
    await pass(100_000);
    expect(stored()).toHaveLength(1);
    other.notes('Still here');
    await pass(1000);
    expect(other.editor().saving).toEqual({ kind: 'saved' });
    expect(stored()).toHaveLength(2);
  });

  test('a lesson brought back in the other is said to be saved again, whoever saved it last', async () => {
    for (const whose of ['one', 'other'] as const) {
      const windows = await twoWindows();
      const { one, other, pass, stored } = windows;
      windows[whose].notes('Saved last');
      await pass(1000);
      await one.session.startNewLesson();
      await one.session.removeSaved(other.lesson().id);
      await pass(1000);
      expect(other.editor().saving).toMatchObject({ kind: 'failed' });
      const [removed] = one.editor().removed;
      if (removed === undefined) throw new Error('The session holds it.');
      await one.session.putBack(removed);
      await pass(1000);
      expect(other.editor().saving).toEqual({ kind: 'saved' });
      other.notes('And on');
      await pass(1000);
      expect(stored().find(({ id }) => id === other.lesson().id)?.notes).toBe('And on');
    }
  });
});

describe('saving', () => {
  test('is at most a second behind, also while someone types without a pause', async () => {
    const { open, pass, stored } = atHand();
    const { notes, lesson } = await open();
    const behind: number[] = [];
    for (let time = 0; time < 15_000; time += 50) {
      notes(`${time}`);
      await pass(50);
      const kept = stored().find(({ id }) => id === lesson().id);
      if (time >= 1000) behind.push(time - Number(kept?.notes ?? Number.NaN));
    }
    expect(Math.max(...behind)).toBeLessThanOrEqual(1000);
  });

  test('gathers what is typed in a row', async () => {
    const { open, pass, writes } = atHand();
    const { notes } = await open();
    for (let key = 0; key < 5; key += 1) {
      notes(`${key}`);
      await pass(100);
    }
    await pass(1000);
    expect(writes.length).toBeLessThanOrEqual(2);
  });

  test('happens at once when the page is left', async () => {
    const { open, settle, stored } = atHand();
    const { notes, leave } = await open();
    notes('Before leaving');
    leave();
    await settle();
    expect(stored()).toMatchObject([{ notes: 'Before leaving' }]);
  });

  test('begins again by itself after a full disk', async () => {
    const { open, pass, state, stored } = atHand();
    const { notes, editor } = await open();
    state.mood = 'is full';
    notes('Kept later');
    await pass(1000);
    expect(editor().saving).toMatchObject({ kind: 'failed', sentence: expect.stringMatching(/is full/) });
    await pass(100_000);
    expect(editor().saving).toMatchObject({ kind: 'failed' });
    state.mood = 'works';
    await pass(60_000);
    expect(editor().saving).toEqual({ kind: 'saved' });
    expect(stored()).toMatchObject([{ notes: 'Kept later' }]);
  });

  test('begins again by itself after the site’s data were cleared, and is noted as open again', async () => {
    const { open, pass, clear, stored, settings } = atHand();
    const { notes, editor, lesson } = await open();
    notes('Stays');
    await pass(1000);
    clear();
    await pass(100);
    expect(stored()).toEqual([lesson()]);
    expect(settings.get('last opened')).toBe(lesson().id);
    expect(editor().saving).toEqual({ kind: 'saved' });
  });

  test.each([0, 3, 9])(
    'begins again also where what *Undo* takes back was being kept, and %i openings are refused',
    async (refusals) => {
      const { open, pass, settle, state, clearUnderWay, stored } = atHand();
      const { notes, editor, lesson } = await open();
      notes('Stays');
      await pass(1400);
      expect(stored()).toEqual([lesson()]);
      state.mood = 'ends no transaction';
      await pass(200);
      await clearUnderWay(settle, refusals);
      await pass(20_000);
      expect(stored()).toEqual([lesson()]);
      expect(editor().saving).toEqual({ kind: 'saved' });
    },
  );

  test('of an untouched sample is not needed, also after the data were cleared', async () => {
    const { open, pass, clear, stored } = atHand();
    await open();
    clear();
    await pass(10_000);
    expect(stored()).toEqual([]);
  });
});

describe('a storage that never answers', () => {
  test.each(['opens never', 'ends no transaction'] as const)(
    'that %s: the page is there after three seconds, works in memory, and never says saved',
    async (mood) => {
      const { state, openWindow, pass, letGo, stored } = atHand();
      state.mood = mood;
      const { starting } = await openWindow();
      await pass(3000);
      const session = await starting;
      const saving = () => session.editor.getState().saving;
      expect(saving()).toMatchObject({ kind: 'failed', sentence: expect.stringMatching(/three seconds/) });

      const said = new Set<string>();
      session.editor.subscribe(({ saving: { kind } }) => said.add(kind));
      session.lessons.change((lesson) => setTitle(lesson, 'In memory'), { label: 'title' });
      await session.saveNow();
      await pass(120_000);
      session.lessons.undo();
      await pass(120_000);
      session.lessons.redo();
      await pass(1000);
      expect([...said]).toEqual(['failed']);

      state.mood = 'works';
      letGo();
      await pass(1000);
      expect(saving()).toEqual({ kind: 'saved' });
      expect(stored()).toMatchObject([{ title: 'In memory' }]);
      expect(session.editor.getState().notice).toMatch(/answers again/);
    },
  );
});

describe('a start that came to no end', () => {
  const guardOf = (suspect: string) => ({
    begin: async () => new Set([suspect]),
    opening: () => {},
    drawn: () => {},
    failed: () => {},
  });

  test('opens another lesson the next time, offers the suspect one as a file, and does not come back to it', async () => {
    const { records, settings, openWindow } = device();
    const { clock } = handClock();
    const suspect = setTitle(sampleLesson(1, 'suspect'), 'Freezes');
    const record = { id: 'suspect', title: 'Freezes', savedAt: 1, revision: 'r', document: suspect };
    records.set('suspect', record);
    settings.set('last opened', 'suspect');
    const storage = openWindow(clock);
    const first = await startSession(storage, NO_COMPOSER, {
      clock,
      watch: () => () => {},
      guard: guardOf('suspect'),
    });
    expect(first.lessons.getState().lesson.title).not.toBe('Freezes');
    expect(first.editor.getState().rescue).toEqual({
      id: 'suspect',
      sentence: expect.stringMatching(/did not come to its end.*not opened again/),
    });
    expect(await storage.raw('suspect')).toMatchObject({ value: suspect });
    expect(records.get('suspect')).toEqual(record);
    expect(settings.get('last opened')).toBe('sample 0');
  });
});
