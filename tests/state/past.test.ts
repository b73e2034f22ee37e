import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { startSession } from '../../src/app/state';
import { newHistory, record } from '../../src/app/state/history';
import { createLessonStore } from '../../src/app/state/lesson-store';
import { keptHistory, readHistory } from '../../src/app/state/stored-history';
import { failure } from '../../src/core/base';
import {
  type Lesson,
  sampleLesson,
  setChartText,
  setNotes,
  setTitle,
  transposeBy,
} from '../../src/core/lesson';
import {
  addVersion,
  carryMend,
  mendsOf,
  openVersion,
  removeVersion,
  storeEdited,
} from '../../src/core/versions';
import { device, handClock } from '../storage/device';
import { LINE, withBarMoved } from '../versions/bars';

const LESSON = sampleLesson(0, 'lesson-1');
const called = (title: string): Lesson => setTitle(LESSON, title);

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

/** A history of three titles, the second of which stands. */
function threeTitles() {
  const store = createLessonStore(called('One'));
  store.change(() => called('Two'), { label: 'second' });
  store.change(() => called('Three'), { label: 'third' });
  store.undo();
  return store.history();
}
const stored = (): unknown => structuredClone(keptHistory(threeTitles()));

describe('the history that is kept', () => {
  test('comes back whole, sharing what did not change with the lesson at hand', () => {
    const at = called('Two');
    const back = readHistory(stored(), at);
    expect(back?.past.map(({ document, label }) => [document.title, label])).toEqual([['One', 'second']]);
    expect(back?.future.map(({ document, label }) => [document.title, label])).toEqual([['Three', 'third']]);
    expect(back?.past[0]?.document.pieces).toBe(at.pieces);
    expect(back?.present).toBe(at);
  });

  test('of another state is one step more', () => {
    const back = readHistory(stored(), called('From another window'));
    expect(back?.past.map(({ document, label }) => [document.title, label])).toEqual([
      ['One', 'second'],
      ['Two', 'what was changed since'],
    ]);
    expect(back?.future).toEqual([]);
  });

  test.each([
    ['nothing', undefined],
    ['a number', 7],
    ['a history of another lesson', structuredClone(keptHistory(newHistory({ ...LESSON, id: 'other' })))],
    ['a lesson without pieces', { past: [], present: { ...LESSON, pieces: undefined }, future: [] }],
    ['pieces that are none', { past: [], present: { ...LESSON, pieces: [null, 7] }, future: [] }],
  ])('%s is none', (_, value) => expect(readHistory(value, LESSON)).toBeNull());

  test('goes as far back as it can be read', () => {
    const broken = {
      past: [
        { label: 'a', document: LESSON },
        { label: 7, document: LESSON },
        { label: 'b', document: called('Near') },
      ],
      present: LESSON,
      future: 'none',
    };
    expect(readHistory(structuredClone(broken), LESSON)?.past.map(({ label }) => label)).toEqual(['b']);
  });

  test('does no harm, whatever it is', () => {
    const anyDocument = fc.record({
      ...Object.fromEntries(
        Object.entries(LESSON).map(([name, value]) => [name, fc.oneof(fc.constant(value), fc.anything())]),
      ),
    });
    fc.assert(
      fc.property(
        fc.array(fc.record({ label: fc.anything(), document: anyDocument })),
        anyDocument,
        (past, present) => {
          const back = readHistory({ past, present, future: past }, LESSON);
          expect(back === null || back.present === LESSON).toBe(true);
        },
      ),
      { seed: 21, numRuns: 100 },
    );
  });

  test('is bounded: the nearest steps stay, and a lesson that is too large has none', () => {
    let history = newHistory(setNotes(LESSON, 'start'));
    for (let step = 0; step < 150; step += 1)
      history = record(history, setNotes(LESSON, `${step} ${'x'.repeat(19_000)}`), `step ${step}`);
    const kept = keptHistory(history);
    expect(kept?.past.at(-1)?.label).toBe('step 149');
    expect(kept?.past.length).toBeGreaterThan(10);
    expect(JSON.stringify(kept?.past.map(({ document }) => document.notes)).length).toBeLessThan(1_000_000);
    const large = {
      ...LESSON,
      pieces: Array.from({ length: 60 }, (_, at) => ({
        ...LESSON.pieces[0],
        id: `p${at}`,
        chartText: 'x'.repeat(20_000),
      })),
    } as Lesson;
    expect(keptHistory(newHistory(large))).toBeNull();
  });
});

/** A window on a device that is opened again and again. */
function again(shared = device()) {
  const time = handClock();
  const leaving: (() => void)[] = [];
  const open = async () => {
    const session = await startSession(shared.openWindow(time.clock), NO_COMPOSER, {
      clock: time.clock,
      watch: ({ leave }) => {
        leaving.push(leave);
        return () => {};
      },
    });
    // As the page does when it has come.
    session.prepareSaving();
    await vi.dynamicImportSettled();
    await time.pass(1000);
    return session;
  };
  return {
    ...shared,
    ...time,
    open,
    leave: () => {
      for (const each of leaving.splice(0)) each();
    },
  };
}

test('what stood before the first change is kept, also where that came before what keeps it', async () => {
  const shared = device();
  const time = handClock();
  const session = await startSession(shared.openWindow(time.clock), NO_COMPOSER, {
    clock: time.clock,
    watch: () => () => {},
  });
  const { title } = session.lessons.getState().lesson;
  session.lessons.change((lesson) => setTitle(lesson, 'At once'), { label: 'call it' });
  session.prepareSaving();
  await vi.dynamicImportSettled();
  await time.pass(3000);
  const states = await session.storage.earlierStates(session.lessons.getState().lesson.id);
  expect(states.ok && states.value.map(({ lesson }) => lesson?.title)).toEqual([title]);
  session.end();
});

describe('a page that is closed and opened again', () => {
  test('takes back and brings back what was changed before', async () => {
    const { open, pass, leave, settle } = again();
    const first = await open();
    first.lessons.change((lesson) => setTitle(lesson, 'One'), { label: 'call it one' });
    first.lessons.change((lesson) => setTitle(lesson, 'Two'), { label: 'call it two' });
    await pass(500);
    leave();
    await settle();
    first.end();
    const second = await open();
    expect(second.lessons.getState()).toMatchObject({ lesson: { title: 'Two' }, undoLabel: 'call it two' });
    second.lessons.undo();
    expect(second.lessons.getState()).toMatchObject({ lesson: { title: 'One' }, redoLabel: 'call it two' });
    second.lessons.redo();
    expect(second.lessons.getState().lesson.title).toBe('Two');
    second.end();
  });

  test('takes back to a lesson with versions, also where the one at hand has none', async () => {
    const { open, pass, settle } = again();
    const first = await open();
    expect(await first.openCopy(addVersion(called('One'), 'for Ada'))).toBe(true);
    const versioned = first.lessons.getState().document;
    first.lessons.changeDocument((document) => removeVersion(document, document.open ?? ''), {
      label: 'remove a version',
    });
    await pass(2000);
    first.end();
    const second = await open();
    await vi.dynamicImportSettled();
    await settle();
    expect(second.lessons.getState()).toMatchObject({ undoLabel: 'remove a version' });
    second.lessons.undo();
    expect(second.lessons.getState().document).toEqual(versioned);
    second.end();
  });

  test('opens all the same where the history is broken, and changes made before it came are kept', async () => {
    const { open, pass, histories, leave, settle } = again();
    const first = await open();
    first.lessons.change((lesson) => setTitle(lesson, 'One'), { label: 'call it one' });
    await pass(2000);
    const { id } = first.lessons.getState().lesson;
    first.end();
    const kept = histories.get(id);
    histories.set(id, { id, history: { past: 'broken', present: 9 } });
    const second = await open();
    expect(second.lessons.getState()).toMatchObject({ lesson: { title: 'One' }, undoLabel: null });
    second.end();
    histories.set(id, kept);
    leave();
    await settle();
  });
});

const chartOf = ({ pieces: [piece] }: Lesson): string => (piece?.kind === 'line' ? piece.chartText : '');

describe('earlier states', () => {
  test('are kept before the day’s first change and before a large one, and one is brought back', async () => {
    const { open, pass, states } = again();
    const session = await open();
    const { lesson } = session.lessons.getState();
    const chart = chartOf(lesson);
    session.lessons.change((each) => setTitle(each, 'Mine'), { label: 'change the title' });
    await pass(1000);
    session.lessons.change((each) => setChartText(each, each.pieces[0]?.id ?? '', '| Am | E7 |'), {
      label: 'change the chart',
    });
    await pass(1000);
    expect([...states.values()]).toMatchObject([
      { before: null, document: { title: lesson.title } },
      { before: 'change the chart', document: { title: 'Mine' } },
    ]);
    const found = await session.storage.earlierStates(lesson.id);
    const state = found.ok ? found.value.find(({ before }) => before === 'change the chart') : undefined;
    if (!state?.lesson) throw new Error('The state is kept.');
    await session.lookAt({ lesson: state.lesson, sentences: ['As it was today.'] });
    expect(session.lessons.getState().lesson.title).toBe('Mine');
    expect(chartOf(session.lessons.getState().lesson)).toBe(chart);
    session.lessons.change((each) => setTitle(each, 'Not now'), { label: 'change the title' });
    expect(session.editor.getState().notice).toMatch(/earlier state .* only shown/);
    session.editor.getState().reading?.only?.earlier?.bringBack();
    await pass(3000);
    expect(session.lessons.getState().lesson.id).toBe(lesson.id);
    expect(chartOf(session.lessons.getState().lesson)).toBe(chart);
    const last = [...states.values()].at(-1);
    expect(last).toMatchObject({ before: 'bring back an earlier state' });
    expect(chartOf((last as { readonly document: Lesson }).document)).toBe('| Am | E7 |');
    session.lessons.undo();
    expect(chartOf(session.lessons.getState().lesson)).toBe('| Am | E7 |');
    session.end();
  });

  test('are kept before something is carried into another version, not where one is opened', async () => {
    const { open, pass, states } = again();
    const session = await open();
    const ada = storeEdited(
      addVersion(called('One'), 'for Ada'),
      transposeBy(withBarMoved(2, 1)(LESSON), LINE, 2),
    );
    await session.openCopy(openVersion(ada, null));
    const { lessons } = session;
    const befores = () => [...states.values()].map((state) => (state as { readonly before: unknown }).before);
    const id = lessons.getState().document.versions?.[0]?.id ?? '';
    lessons.changeDocument((document) => openVersion(document, id), null);
    lessons.changeDocument((document) => openVersion(document, null), null);
    lessons.change(withBarMoved(2, -1), { label: 'move a bar' });
    await pass(1000);
    expect(befores()).toEqual([null]);
    const [mend] = mendsOf(lessons.getState().document);
    if (mend === undefined) throw new Error('The bar was mended.');
    lessons.changeDocument((document) => carryMend(document, mend), { label: 'take the tune’s bar 3' });
    await pass(1000);
    expect(befores()).toEqual([null, 'take the tune’s bar 3']);
    session.end();
  });

  test('come back with all their versions', async () => {
    const { open, pass } = again();
    const session = await open();
    const versioned = addVersion(called('One'), 'for Ada');
    await session.openCopy(versioned);
    const { document } = session.lessons.getState();
    session.lessons.changeDocument((each) => setTitle(each, 'Two'), { label: 'change the title' });
    await pass(1000);
    const found = await session.storage.earlierStates(document.id);
    const lesson = found.ok ? found.value[0]?.lesson : null;
    if (!lesson) throw new Error('The state is kept.');
    await session.lookAt({ lesson, sentences: ['As it was today.'] });
    session.editor.getState().reading?.only?.earlier?.bringBack();
    await pass(3000);
    expect(session.lessons.getState().document).toEqual(document);
    session.end();
  });
});
