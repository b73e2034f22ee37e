import { barName, capitalised } from '../base';
import type { Lesson } from '../lesson';
import { deskOf } from './context';
import type { Pencil } from './types';

/** Whether a sentence names a bar: `Bar 8`, `bars 3, 5 and 8`, `bars 3 to 6`, `the pickup to bar 4`; the pickup is 0. */
const names = (sentence: string, bar: number): boolean =>
  [
    ...sentence.matchAll(
      /\bthe pickup\b(?: to bar (\d+))?|\bbars? (\d+(?:, \d+| and \d+)*)(?: to (\d+))?/giu,
    ),
  ].some(([, fromPickupTo, list, to]) => {
    if (list === undefined) return bar <= Number(fromPickupTo ?? 0);
    const numbers = [...list.matchAll(/\d+/gu)].map(([number]) => Number(number));
    return numbers.includes(bar) || (to !== undefined && bar > Number(list) && bar <= Number(to));
  });

/** Whether a sentence begins with a bar, as one does that is about the way out of it, too. */
const isHeadedBy = (sentence: string, bar: number): boolean =>
  sentence.startsWith(`${capitalised(barName(bar))}: `);

/**
 * What was said of a composed line that still holds after a change by hand: nothing of the bars whose notes are others
 * now, nor of a bar before one of them, which leads into it.
 */
export function stillSaid(
  remarks: readonly string[],
  before: Lesson,
  after: Lesson,
  pencil: Pencil,
): readonly string[] {
  if (remarks.length === 0) return remarks;
  const [was, is] = [deskOf(before, pencil), deskOf(after, pencil)];
  if (was === null || is === null) return remarks;
  const changed = is.piece.bars.map(({ notes }, index) => was.piece.bars[index]?.notes !== notes);
  if (!changed.includes(true)) return remarks;
  const numbersWhere = (holds: (index: number) => boolean): readonly number[] =>
    changed.flatMap((_, index) => (holds(index) ? [is.bars[index]?.number ?? index + 1] : []));
  const written = numbersWhere((index) => changed[index] === true);
  const leading = numbersWhere((index) => changed[index + 1] === true);
  return remarks.filter(
    (remark) => !written.some((bar) => names(remark, bar)) && !leading.some((bar) => isHeadedBy(remark, bar)),
  );
}
