import { createRandom, hashText } from '../base';
import { type LineSheet, MOST_QUESTIONS, type QuestionSettings } from '../lesson';
import { MAKERS } from './makers';
import { readBars } from './reading';
import { type Difficulty, QUESTION_KINDS, type Question } from './types';

/** Everything that can be asked of a line, kind by kind, each in the order of the bars. */
export function questionsOf(sheet: LineSheet): readonly Question[] {
  const bars = readBars(sheet);
  return QUESTION_KINDS.flatMap((kind) => bars.flatMap((bar) => MAKERS[kind]({ sheet, bars }, bar)));
}

/** What a teacher asks for. */
export interface QuestionWish {
  readonly count: number;
  /** The hardest that is asked. */
  readonly difficulty: Difficulty;
  /** What stands on the sheet of paper that asks them: what it shows is not asked, and what is left empty on it is asked alone. */
  readonly onPaper?: 'staff' | 'tab';
  /** Another number gives other questions. */
  readonly seed: number;
}

/** Few questions are as hard as they may be. */
const HARDEST_FIRST = [...QUESTION_KINDS].reverse();

/** Whether neither of two questions needs a bar that the other one leaves empty. */
const readable = (one: Question, other: Question): boolean =>
  (one.empty === undefined || !other.bars.includes(one.empty)) &&
  (other.empty === undefined || !one.bars.includes(other.empty));

/** What the draw of a line's questions begins with: the same on the page and on paper. */
export const questionSeed = (sheet: LineSheet, { seed = 0 }: Pick<QuestionSettings, 'seed'>): number =>
  hashText(sheet.id) + seed;

/**
 * So many questions about a line, each kind in turn and no bar twice where there are others, asked from the easiest to the
 * hardest. Fewer where the line has no more to ask.
 */
export function chosenQuestions(sheet: LineSheet, wish: QuestionWish): readonly Question[] {
  const random = createRandom(wish.seed);
  const fitting = questionsOf(sheet).filter(
    ({ kind, difficulty }) => difficulty <= wish.difficulty && (wish.onPaper !== 'tab' || kind !== 'frets'),
  );
  const drawn = fitting
    .map((question) => ({ question, at: random.next() }))
    .sort((one, other) => one.at - other.at);
  const chosen: Question[] = [];
  const used = new Map<number, number>();
  for (let round = 0; chosen.length < wish.count && round < MOST_QUESTIONS; round += 1) {
    for (const kind of HARDEST_FIRST) {
      if (chosen.length >= wish.count) break;
      const usesOf = ({ bars }: Question) => used.get(bars[0] ?? 0) ?? 0;
      const [next] = drawn
        .map(({ question }) => question)
        .filter((question) => question.kind === kind && !chosen.includes(question))
        .filter(
          (question) => wish.onPaper === undefined || chosen.every((other) => readable(other, question)),
        )
        .sort((one, other) => usesOf(one) - usesOf(other));
      if (next === undefined) continue;
      chosen.push(next);
      used.set(next.bars[0] ?? 0, usesOf(next) + 1);
    }
  }
  return chosen.sort((one, other) => QUESTION_KINDS.indexOf(one.kind) - QUESTION_KINDS.indexOf(other.kind));
}
