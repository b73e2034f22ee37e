import { chosenQuestions, type Question } from '../../core/asking';
import { hashText } from '../../core/base';
import type { LineSheet } from '../../core/lesson';
import type { Mark } from '../layout/marks';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/** Handwriting asks for about 8 mm from line to line (common practice, no source). */
const WRITING = 23;

/** The widest blank, the gap between two, in points. */
const BLANK = 64;
const GAP = 12;

/** The same questions for the same line, on the sheet and on its answer sheet. */
const asked = (sheet: LineSheet, { settings }: BlockContext): readonly Question[] =>
  chosenQuestions(sheet, { ...settings.questions, seed: hashText(sheet.id) });

/** A line of blanks to write on; one long one where the answer is a sentence or a count. */
function blankRow(question: Question, { width }: BlockContext): Row {
  const count = Math.max(1, question.blanks);
  const room = (width - GAP * (count - 1)) / count;
  const own = question.blanks === 1 ? Math.min(width, 3 * BLANK) : Math.min(BLANK, room);
  const marks = Array.from(
    { length: count },
    (_, index): Mark => ({ kind: 'rule', x: index * (own + GAP), y: WRITING, width: own, height: 0 }),
  );
  return { height: WRITING + 2, gap: 0, keepWithNext: false, marks };
}

/** Questions about a line with blanks to fill in: names, degrees, frets, beats, words. */
export function questionRows(sheet: LineSheet, context: BlockContext): readonly Row[] {
  const { sizes, spacing, width, measure } = context;
  const rows = asked(sheet, context).flatMap((question, index): readonly Row[] => [
    ...paragraphRows(`${index + 1}. ${question.text}`, sizes.body, width, measure, { gap: 4 }).map((row) => ({
      ...row,
      keepWithNext: true,
    })),
    blankRow(question, context),
  ]);
  return headedRows('Questions', sizes.heading, spacing.blockGap, rows);
}

/** The answers to the same questions, which are computed from the notes. */
export function answerRows(sheet: LineSheet, context: BlockContext): readonly Row[] {
  const { sizes, spacing, width, measure } = context;
  const rows = asked(sheet, context).flatMap(({ answer }, index) =>
    paragraphRows(`${index + 1}. ${answer}`, sizes.body, width, measure, { gap: 2 }),
  );
  return headedRows('Answers', sizes.heading, spacing.blockGap, rows);
}
