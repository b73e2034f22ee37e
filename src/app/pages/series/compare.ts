import { failure, listed, type Result, success } from '../../../core/base';
import { type Known, likenessWords, nearestLines, sketchOf } from '../../../core/series';
import type { Entry } from '../../../core/students';
import type { Session } from '../../state';
import { breathe, everyVersionOf, type GivenOut } from './read-weeks';

/** As many of the nearest lines are told. */
const MOST_TOLD = 6;

/** A line of this device that the open one is held against. */
interface Other extends GivenOut {
  /** Id of the lesson. */
  readonly id: string;
}

/** How the open line differs from the nearest of the others, a sentence each, and how many it was held against. */
export interface Compared {
  readonly sentences: readonly string[];
  readonly count: number;
}

/** The students who were given a lesson in a version, as a word after its title; '' for nobody. */
function havers(entries: readonly Entry[], { id, version }: Other): string {
  const names = entries.flatMap((entry) =>
    entry.kind === 'student' && entry.given.some((one) => one.lesson === id && one.version === version)
      ? [entry.name]
      : [],
  );
  return names.length === 0 ? '' : `, which ${listed(names)} ${names.length === 1 ? 'has' : 'have'}`;
}

/**
 * Compares the line of the open lesson with every other on this device: each lesson's tune and each of its versions,
 * those of the open lesson that are not open included.
 * @param entries - of the register, which tell who was given what
 * @param onLesson - hears which lesson is read, and says whether it is still wanted
 * @returns null where it is no longer wanted
 */
export async function compareWithShelf(
  session: Session,
  entries: readonly Entry[],
  onLesson: (number: number, of: number) => boolean,
): Promise<Result<Compared | null, string>> {
  const { lesson, document } = session.lessons.getState();
  const own = sketchOf(lesson);
  if (own.rhythms.length === 0) return failure('The open lesson has no line to compare yet.');
  const found = await session.storage.list();
  if (!found.ok) return found;
  const open = document.open ?? null;
  const readable = found.value.filter((each) => each.readable);
  const known: Known<Other>[] = [];
  for (const [index, { id }] of readable.entries()) {
    if (!onLesson(index + 1, readable.length)) return success(null);
    const all = await everyVersionOf(session, id);
    await breathe();
    for (const each of all) {
      if (id === lesson.id && each.version === open) continue;
      const sketch = sketchOf(each.lesson);
      // Where nothing is written yet there is nothing to differ from.
      if (sketch.rhythms.length > 0) known.push({ of: { ...each, id }, sketch });
    }
  }
  return success({
    count: known.length,
    sentences: nearestLines(own, known)
      .slice(0, MOST_TOLD)
      .map(({ of, likeness }) => likenessWords(likeness, own.rhythms.length, of.called, havers(entries, of))),
  });
}
