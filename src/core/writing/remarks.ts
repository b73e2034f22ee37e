import { barName } from '../base';
import type { Lesson } from '../lesson';
import { deskOf } from './context';
import type { Pencil } from './types';

/** Whether a sentence names a bar: `Bar 8 has no chord`, `a note in bars 3, 5 and 8`, `the pickup`. */
function names(sentence: string, bar: number): boolean {
  const name = barName(bar);
  if (!name.endsWith(` ${bar}`)) return sentence.toLowerCase().includes(name);
  return new RegExp(`\\bbars? (?:\\d+(?:, | and | to ))*${bar}\\b`, 'iu').test(sentence);
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
