import { type Result, remembered, success } from '../../../core/base';
import { deriveSheets, type Lesson } from '../../../core/lesson';
import type { Copy } from '../../../core/students';
import type { Handout } from '../../../handout';
import type { MakeOptions } from '../../../tracks';
import { practiceAddress } from '../common';
import { nameless } from './many';

/** How the handouts of several people are wanted. */
export interface HandoutsWishes {
  readonly copies: readonly Copy[];
  /** For paper that is printed on both sides: each begins on a sheet of its own. */
  readonly sheets: boolean;
}

/** A version's lesson as a copy has it: for the student where they are named, else for nobody. */
function copied(lesson: Lesson, { student }: Copy): Lesson {
  return student === null ? nameless(lesson, false) : { ...lesson, handout: { ...lesson.handout, student } };
}

/**
 * The handouts of several people one behind the other; null where it was called off. What several have alike is laid
 * out once.
 * @throws the network's error when the score's fonts cannot be fetched
 */
export async function handoutsOf(
  document: Lesson,
  { copies, sheets }: HandoutsWishes,
  { signal, onShare }: MakeOptions,
): Promise<Result<Handout | null, string>> {
  const [{ buildHandout, joinHandouts }, { lessonOfVersion }] = await Promise.all([
    import('../../../handout'),
    import('../../../core/versions'),
  ]);
  const address = practiceAddress(window.location.href);
  const built = new Map<string, Promise<Handout>>();
  const parts = [];
  for (const copy of copies) {
    if (signal.aborted) return success(null);
    const handout = await remembered(built, JSON.stringify([copy.version, copy.student]), () => {
      const lesson = copied(lessonOfVersion(document, copy.version), copy);
      return buildHandout(lesson, deriveSheets(lesson), address);
    });
    parts.push({ words: copy.called, handout });
    onShare(parts.length / copies.length);
  }
  return success(joinHandouts(document.title, parts, sheets));
}
