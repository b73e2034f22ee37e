import { describe, expect, test } from 'vitest';
import { compareWithShelf } from '../../src/app/pages/series/compare';
import type { Session } from '../../src/app/state';
import { type Lesson, newLesson, setTitle } from '../../src/core/lesson';
import type { Entry } from '../../src/core/students';
import { addVersion, lessonAsOpen, openVersion, storeEdited } from '../../src/core/versions';
import { composedLesson } from '../series/composed';
import { device, handClock } from '../storage/device';
import { given, student } from '../students/entries';

const idOf = (document: Lesson, at: number): string => document.versions?.[at]?.id ?? '';

/** The line of one lesson in the place of another's. */
const withLineOf = (lesson: Lesson, other: Lesson): Lesson => ({
  ...lesson,
  pieces: lesson.pieces.map((piece, at) => ({ ...piece, ...other.pieces[at], id: piece.id })),
});

/** A tune and what two students have of it: Ada another line, Ben the tune's. */
const ADAS = composedLesson('ada', { feel: 'soul-backbeat' });
const HARBOUR = (() => {
  const tune = setTitle(composedLesson('harbour', { feel: 'early-ska' }), 'Harbour');
  const both = addVersion(addVersion(tune, 'for Ada'), 'for Ben');
  const adas = openVersion(both, idOf(both, 0));
  return openVersion(storeEdited(adas, withLineOf(lessonAsOpen(adas), ADAS)), null);
})();

const ENTRIES: readonly Entry[] = [
  student('s1', 'Ada', { given: [given('harbour', '2026-11-02', { version: idOf(HARBOUR, 0) })] }),
  student('s2', 'Ben', { given: [given('harbour', '2026-11-02', { version: idOf(HARBOUR, 1) })] }),
  student('s3', 'Cleo', { given: [given('harbour', '2026-11-09', { version: idOf(HARBOUR, 0) })] }),
];

async function compared(open: Lesson, others: readonly Lesson[], entries = ENTRIES) {
  const storage = device().openWindow(handClock().clock);
  for (const each of [open, ...others]) expect(await storage.save(each, null, 1)).toMatchObject({ ok: true });
  const lessons = { getState: () => ({ document: open, lesson: lessonAsOpen(open) }) };
  const read: number[] = [];
  const done = await compareWithShelf({ storage, lessons } as unknown as Session, entries, (number) => {
    read.push(number);
    return true;
  });
  if (!done.ok || done.value === null) throw new Error('It was compared.');
  return { ...done.value, read };
}

describe('a new line', () => {
  test('is held against the tune and every version that others were given, and says who has the nearest', async () => {
    const fresh = setTitle(withLineOf(newLesson('fresh', 'Fresh'), ADAS), 'Fresh');
    const { sentences, count, read } = await compared(fresh, [HARBOUR]);
    // The tune, Ada's version and Ben's: the open lesson itself is none of them.
    expect(count).toBe(3);
    expect(read).toEqual([1, 2]);
    expect(sentences).toHaveLength(3);
    expect(sentences[0]).toMatch(
      /^Too close to “Harbour, for Ada”, which Ada and Cleo have: 100 % of its figures/,
    );
    const [tune, bens] = [
      sentences.find((each) => /“Harbour”/.test(each)),
      sentences.find((each) => /for Ben/.test(each)),
    ];
    expect(tune).toMatch(/^Differs from “Harbour”: /);
    expect(bens).toMatch(/^Differs from “Harbour, for Ben”, which Ben has: /);
  });

  test('that is a version is held against the tune and the other versions, not against itself', async () => {
    const { sentences, count } = await compared(openVersion(HARBOUR, idOf(HARBOUR, 1)), []);
    expect(count).toBe(2);
    expect(sentences.join('\n')).not.toContain('for Ben');
    expect(sentences.find((each) => /“Harbour”/.test(each))).toMatch(/^Too close/);
    expect(sentences.find((each) => /for Ada/.test(each))).toMatch(
      /^Differs from .*, which Ada and Cleo have: /,
    );
  });

  test('is not held against a lesson in which nothing is written', async () => {
    expect(await compared(ADAS, [newLesson('empty', 'Empty')], [])).toMatchObject({
      count: 0,
      sentences: [],
    });
  });
});
