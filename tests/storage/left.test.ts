import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { noteLeft, withLeft } from '../../src/app/storage/left';
import { failure, success } from '../../src/core/base';
import { type Lesson, newLesson } from '../../src/core/lesson';

const stood = newLesson('ferry', 'As it stood');
const typed = newLesson('ferry', 'As it was left');
const AT = 1_750_000_000_000;

const notes = new Map<string, string>();
beforeEach(() => {
  notes.clear();
  vi.stubGlobal('window', {
    localStorage: {
      getItem: (name: string) => notes.get(name) ?? null,
      setItem: (name: string, text: string) => notes.set(name, text),
      removeItem: (name: string) => notes.delete(name),
    },
  });
});
afterEach(() => vi.unstubAllGlobals());

/** Opens the lesson as it stands at a revision; gives its title, and what was saved in doing so. */
async function opened(revision: string, saves = true) {
  const saved: { readonly lesson: Lesson; readonly base: string; readonly at: number }[] = [];
  const found = await withLeft(
    'ferry',
    { kind: 'lesson', lesson: stood, revision },
    async (lesson, base, at) => {
      saved.push({ lesson, base, at });
      return saves ? success('next 1') : failure('The storage is full.');
    },
  );
  return { title: found.kind === 'lesson' ? found.lesson.title : null, saved };
}

test('what was noted when the page was left is saved, as of its time, and opened', async () => {
  noteLeft('window', typed, 'window 4', AT);
  const { title, saved } = await opened('window 4');
  expect(title).toBe('As it was left');
  expect(saved).toEqual([{ lesson: typed, base: 'window 4', at: AT }]);
});

test('it goes on from what the same window was saving at that moment', async () => {
  noteLeft('window', typed, 'window 4', AT);
  expect((await opened('window 5')).title).toBe('As it was left');
});

test('it never takes the place of what another window has saved since, and is let go', async () => {
  noteLeft('window', typed, 'window 4', AT);
  expect(await opened('other 1')).toEqual({ title: 'As it stood', saved: [] });
  expect(notes.size).toBe(0);
});

test('a storage that refuses leaves the note for another time', async () => {
  noteLeft('window', typed, 'window 4', AT);
  expect((await opened('window 4', false)).title).toBe('As it stood');
  expect((await opened('window 4')).title).toBe('As it was left');
});

test('a note that is no lesson is let go', async () => {
  noteLeft('window', typed, 'window 4', AT);
  const [name = ''] = notes.keys();
  for (const text of [
    '{',
    'null',
    '[]',
    JSON.stringify({ by: 'window', base: 'window 4', at: AT, lesson: {} }),
  ]) {
    notes.set(name, text);
    expect(await opened('window 4')).toEqual({ title: 'As it stood', saved: [] });
    expect(notes.size).toBe(0);
  }
});
