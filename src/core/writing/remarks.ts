import { barName } from '../base';
import type { Lesson } from '../lesson';
import { deskOf } from './context';
import type { Pencil } from './types';

/** The bars that a sentence names by their numbers: `Bar 8 has no chord`, `a note in bars 3, 5 and 8`. */
const numbered = (sentence: string): readonly number[] =>
  [...sentence.matchAll(/\bbars? (\d+(?:, \d+| and \d+| to \d+)*)/giu)].flatMap(([, list = '']) =>
    [...list.matchAll(/\d+/gu)].map(([number]) => Number(number)),
  );

/** Whether a sentence names a bar, by its number or as `the pickup`. */
function names(sentence: string, bar: number): boolean {
  const name = barName(bar);
  return name.endsWith(` ${bar}`) ? numbered(sentence).includes(bar) : sentence.toLowerCase().includes(name);
}

/**
 * What was said of a composed line that still holds after a change by hand: nothing of the bars whose notes are others
 * now.
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
  const written = is.piece.bars.flatMap(({ notes }, index) =>
    was.piece.bars[index]?.notes === notes ? [] : [is.bars[index]?.number ?? index + 1],
  );
  return written.length === 0
    ? remarks
    : remarks.filter((remark) => !written.some((number) => names(remark, number)));
}
