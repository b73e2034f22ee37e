import { type Result, remembered, success } from '../../../core/base';
import { deriveSheets, type Lesson } from '../../../core/lesson';
import type { Copy } from '../../../core/students';
import type { Handout, HandoutPart } from '../../../handout';
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
 * out once. Answers to questions stand in no copy: they come once a version, behind all copies, for the teacher.
 * @throws the network's error when the score's fonts cannot be fetched
 */
export async function handoutsOf(
  document: Lesson,
  { copies, sheets }: HandoutsWishes,
  { signal, onShare }: MakeOptions,
): Promise<Result<Handout | null, string>> {
  const [{ buildHandout, joinHandouts, withAnswersApart }, { lessonOfVersion }] = await Promise.all([
    import('../../../handout'),
    import('../../../core/versions'),
  ]);
  const address = practiceAddress(window.location.href);
  const built = new Map<string, Promise<ReturnType<typeof withAnswersApart>>>();
  const parts: HandoutPart[] = [];
  const keys = new Map<string | null, HandoutPart>();
  for (const copy of copies) {
    if (signal.aborted) return success(null);
    const { sheet, key } = await remembered(built, JSON.stringify([copy.version, copy.student]), async () => {
      const lesson = copied(lessonOfVersion(document, copy.version), copy);
      return withAnswersApart(await buildHandout(lesson, deriveSheets(lesson), address));
    });
    parts.push({ words: copy.called, handout: sheet });
    if (key !== null && !keys.has(copy.version))
      keys.set(copy.version, { words: `Answers: ${copy.called}`, handout: key });
    onShare(parts.length / copies.length);
  }
  return success(joinHandouts(document.title, [...parts, ...keys.values()], sheets));
}
