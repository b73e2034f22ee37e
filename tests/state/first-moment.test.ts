import { expect, test } from 'vitest';
import { createLessonStore } from '../../src/app/state/lesson-store';
import { LESSON_LIMITS, newLesson, setChartText, setTitle, whyNotKept } from '../../src/core/lesson';

const FIRST = newLesson('lesson-1', 'New lesson');
const TOO_LONG = 'C '.repeat(LESSON_LIMITS.text);
const REFUSED = expect.stringMatching(/^A chart has at most .* The lesson is as it was\.$/);

/** A store whose edits are checked once what checks them is here. */
function lateChecks(opened = FIRST) {
  const said: string[] = [];
  let isHere = false;
  const store = createLessonStore(opened, (sentence) => said.push(sentence), {
    whyRefused: () => null,
    whyNotKept: (document) => (isHere ? whyNotKept(document) : null),
  });
  const paste = (text: string) =>
    store.change((lesson) => setChartText(lesson, lesson.pieces[0]?.id ?? '', text), { label: 'paste' });
  return {
    said,
    store,
    paste,
    arrive: () => {
      isHere = true;
      store.checkAgain();
    },
  };
}

test('an edit of before the checker that could not be read again is taken back, and refused as ever', () => {
  const { said, store, paste, arrive } = lateChecks();
  store.change((lesson) => setTitle(lesson, 'Ferry queue'), { label: 'call it' });
  const { lesson: good } = store.getState();
  paste(TOO_LONG);
  expect(said).toEqual([]);
  arrive();
  expect(store.getState().lesson).toBe(good);
  expect(said).toEqual([REFUSED]);
  expect(store.getState().redoLabel).toBeNull();
  expect(store.getState().undoLabel).toBe('call it');

  paste(TOO_LONG);
  expect(store.getState().lesson).toBe(good);
  expect(said).toEqual([REFUSED, REFUSED]);
});

test('edits of before the checker that can be read again stay, and nothing is said', () => {
  const { said, store, paste, arrive } = lateChecks();
  paste('| C | F | G | C |');
  const { lesson } = store.getState();
  arrive();
  expect(store.getState().lesson).toBe(lesson);
  expect(store.getState().undoLabel).toBe('paste');
  expect(said).toEqual([]);
});

test('the lesson as it was opened is never taken back to what stood before it', () => {
  const large = setChartText(FIRST, FIRST.pieces[0]?.id ?? '', TOO_LONG);
  const { said, store, arrive } = lateChecks(large);
  store.remember({
    past: [{ document: FIRST, label: 'paste' }],
    present: large,
    future: [],
    joinKey: null,
  });
  arrive();
  expect(store.getState().document).toBe(large);
  expect(said).toEqual([]);
});
