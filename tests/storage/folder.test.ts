import { expect, test } from 'vitest';
import { meetFolder } from '../../src/app/storage/folder/meet';
import { type Lesson, printLesson, sampleLesson, setTempo, transposeBy } from '../../src/core/lesson';
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

/** What becomes of a lesson that was changed in the folder alone. */
async function cameFrom(change: (lesson: Lesson) => Lesson) {
  const storage = device().openWindow(handClock().clock);
  await storage.save(HERE, null, 1);
  const agreed: readonly Settled[] = [{ id: HERE.id, file: FILE, mark: lessonMark(HERE) }];
  const met = await meetFolder(storage, folderWith(change(HERE)), agreed, new Set());
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
