import { chosenQuestions, type Question, questionSeed } from '../../core/asking';
import type { LineSheet, Sheet } from '../../core/lesson';
import type { Mark } from '../layout/marks';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/** Handwriting asks for about 8 mm from line to line (common practice, no source). */
const WRITING = 23;

/** The widest blank, the gap between two, in points. */
const BLANK = 64;
const GAP = 12;

/** The same questions for the same line, on the sheet and on its answer sheet. */
const asked = (sheet: LineSheet, { settings: { questions, parts } }: BlockContext): readonly Question[] =>
  chosenQuestions(sheet, {
    ...questions,
    seed: questionSeed(sheet, questions),
    onPaper: parts === 'tab' ? 'tab' : 'staff',
  });

/** The line as its questions have it on the sheet: bars that are asked for stand empty. */
export function withBarsToWrite(sheet: Sheet, context: BlockContext): Sheet {
  if (sheet.kind !== 'line' || !context.asks) return sheet;
  const toWrite = asked(sheet, context).flatMap(({ empty }) => empty ?? []);
  return toWrite.length === 0 ? sheet : { ...sheet, toWrite };
}

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
  const rows = asked(sheet, context).flatMap((question, index): readonly Row[] => {
    const text = `${index + 1}. ${question.onPaper ?? question.text}`;
    const words = paragraphRows(text, sizes.body, width, measure, { gap: 10 });
    if (question.empty !== undefined) return words;
    return [...words.map((row) => ({ ...row, keepWithNext: true })), blankRow(question, context)];
  });
  return headedRows('Questions', sizes.heading, spacing.blockGap, rows);
}

/** The answers to the same questions, which are computed from the notes. */
export function answerRows(sheet: LineSheet, context: BlockContext): readonly Row[] {
  const { sizes, spacing, width, measure } = context;
  const rows = asked(sheet, context).flatMap(({ kind, answer }, index) =>
    paragraphRows(
      `${index + 1}. ${kind === 'frets' ? `for example ${answer}` : answer}`,
      sizes.body,
      width,
      measure,
      { gap: 2 },
    ),
  );
  return headedRows('Answers', sizes.heading, spacing.blockGap, rows);
}
