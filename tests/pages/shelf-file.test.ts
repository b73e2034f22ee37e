import * as fc from 'fast-check';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readShelf, writeShelf } from '../../src/app/pages/lessons/shelf/one-file';
import type { Session } from '../../src/app/state';
import { success } from '../../src/core/base';
import {
  type Lesson,
  parseLesson,
  printLesson,
  sampleLesson,
  setNotes,
  setTitle,
} from '../../src/core/lesson';
import { device, handClock } from '../storage/device';

const SAMPLE = sampleLesson(0, 'lesson-1');
const lesson = (id: string, title: string): Lesson => setTitle({ ...SAMPLE, id }, title);

/** A text as UTF-8 keeps it: half a pair of surrogates is no character (Unicode, 3.9). */
const wellFormed = (text: string): string => strFromU8(strToU8(text));

/** A device as the deeds of the shelf see it. */
function shelf() {
  const { openWindow, records, state } = device();
  const storage = openWindow(handClock().clock);
  const session = { storage, saveNow: async () => success(null) } as unknown as Session;
  return { storage, session, records, state };
}

async function put(at: ReturnType<typeof shelf>, lessons: readonly Lesson[]): Promise<void> {
  for (const each of lessons) expect(await at.storage.save(each, null, 1)).toMatchObject({ ok: true });
}

async function fileOf(at: ReturnType<typeof shelf>): Promise<Uint8Array> {
  const written = await writeShelf(at.session, false);
  if (!written.ok) throw new Error(written.problem);
  const parts = written.value.parts;
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let filled = 0;
  for (const part of parts) {
    bytes.set(part, filled);
    filled += part.length;
  }
  return bytes;
}

const lessonsOn = ({ records }: ReturnType<typeof shelf>): readonly Lesson[] =>
  [...records.values()].map((record) => (record as { readonly document: Lesson }).document);

describe('the whole shelf as one file', () => {
  test('is an archive that another reader reads: a lesson file for each lesson, no two of one name', async () => {
    const here = shelf();
    await put(here, [lesson('a', 'Week 1'), lesson('b', 'Week 1'), lesson('c', 'A/B: “?”')]);
    const entries = unzipSync(await fileOf(here));
    expect(Object.keys(entries).sort()).toEqual([
      'A B  “ ”.lesson.json',
      'Week 1 2.lesson.json',
      'Week 1.lesson.json',
    ]);
    for (const bytes of Object.values(entries))
      expect(parseLesson(strFromU8(bytes))).toMatchObject({ ok: true });
  });

  test('comes back whole, whatever was typed, and the second time brings nothing', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.tuple(
            fc.string({ unit: 'binary', maxLength: 60 }),
            fc.string({ unit: 'grapheme', maxLength: 200 }),
          ),
          { maxLength: 5 },
        ),
        async (typed) => {
          const [here, there] = [shelf(), shelf()];
          const lessons = typed.map(([title, notes], index) => setNotes(lesson(`id-${index}`, title), notes));
          await put(here, lessons);
          const file = await fileOf(here);
          const came = await readShelf(there.session, file);
          if (lessons.length === 0) return;
          expect(came).toMatchObject({
            ok: true,
            value: expect.stringMatching(/^\d+ lessons? came to the shelf\.$/),
          });
          // As JSON in UTF-8 keeps it: half a pair of surrogates is no character.
          expect(new Set(lessonsOn(there).map(printLesson))).toEqual(
            new Set(
              lessons.map((each) =>
                printLesson({ ...each, title: wellFormed(each.title), notes: wellFormed(each.notes) }),
              ),
            ),
          );
          const before = JSON.stringify([...there.records]);
          expect(await readShelf(there.session, file)).toMatchObject({
            ok: true,
            value: expect.stringMatching(/^0 lessons came.* stood here already/),
          });
          expect(JSON.stringify([...there.records])).toBe(before);
        },
      ),
      { seed: 21, numRuns: 15 },
    );
  });

  test('of a lesson with two states both are kept, once', async () => {
    const [here, there] = [shelf(), shelf()];
    await put(here, [lesson('a', 'Theirs'), lesson('b', 'Only theirs')]);
    await put(there, [lesson('a', 'Mine')]);
    const file = await fileOf(here);
    const came = await readShelf(there.session, file);
    expect(came.ok && came.value).toBe(
      '1 lesson came to the shelf. 1 lesson stood here in another state: both are kept, and the file’s says “(from the file)” in its title: “Theirs”.',
    );
    const titles = () =>
      lessonsOn(there)
        .map(({ title }) => title)
        .sort();
    expect(titles()).toEqual(['Mine', 'Only theirs', 'Theirs (from the file)']);
    expect(lessonsOn(there).find(({ id }) => id === 'a')?.title).toBe('Mine');
    await readShelf(there.session, file);
    expect(titles()).toEqual(['Mine', 'Only theirs', 'Theirs (from the file)']);
  });

  test('what cannot be read goes along as it is, and is named when it is left in the file', async () => {
    const [here, there] = [shelf(), shelf()];
    here.records.set('bad', { id: 'bad', title: 'Broken', savedAt: 1, document: { pieces: 7 } });
    await put(here, [lesson('a', 'Whole')]);
    const came = await readShelf(there.session, await fileOf(here));
    expect(came.ok && came.value).toMatch(/^1 lesson came.*Left in the file, .*Broken\.lesson\.json\.$/);
  });

  test.each([
    ['a text', strToU8('no archive')],
    ['nothing', new Uint8Array()],
    ['an archive of other things', zipSync({ 'a.txt': strToU8('a') })],
  ])('%s is no shelf, and nothing is changed', async (_, bytes) => {
    const there = shelf();
    expect(await readShelf(there.session, bytes)).toMatchObject({
      problem: expect.stringMatching(/is no shelf/),
    });
    expect(there.records.size).toBe(0);
  });

  test('a lesson that would grow beyond all measure is left in the file', async () => {
    const there = shelf();
    const bomb = zipSync({
      'a.lesson.json': new Uint8Array(40_000_000),
      'b.lesson.json': strToU8(printLesson(lesson('b', 'B'))),
    });
    const came = await readShelf(there.session, bomb);
    expect(came.ok && came.value).toMatch(/^1 lesson came.*Left in the file.*a\.lesson\.json/);
  });

  test('a device that is full is told of, with what came before', async () => {
    const [here, there] = [shelf(), shelf()];
    await put(here, [lesson('a', 'A')]);
    const file = await fileOf(here);
    there.state.mood = 'is full';
    expect(await readShelf(there.session, file)).toMatchObject({
      problem: expect.stringMatching(/The others did not come: .*full/),
    });
  });
});
