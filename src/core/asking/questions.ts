import { createRandom } from '../base';
import { type LineSheet, MOST_QUESTIONS } from '../lesson';
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
  /** Questions that can be answered by tapping alone. */
  readonly tapped?: boolean;
  /** Another number gives other questions. */
  readonly seed: number;
}

/**
 * So many questions about a line, each kind in turn and no bar twice where there are others: the easiest kinds first. Fewer
 * where the line has no more to ask.
 */
export function chosenQuestions(sheet: LineSheet, wish: QuestionWish): readonly Question[] {
  const random = createRandom(wish.seed);
  const fitting = questionsOf(sheet).filter(
    ({ difficulty, choices }) =>
      difficulty <= wish.difficulty && (wish.tapped !== true || choices.length > 1),
  );
  const drawn = fitting
    .map((question) => ({ question, at: random.next() }))
    .sort((one, other) => one.at - other.at);
  const chosen: Question[] = [];
  const used = new Map<number, number>();
  for (let round = 0; chosen.length < wish.count && round < MOST_QUESTIONS; round += 1) {
    for (const kind of QUESTION_KINDS) {
      if (chosen.length >= wish.count) break;
      const usesOf = ({ bars }: Question) => used.get(bars[0] ?? 0) ?? 0;
      const [next] = drawn
        .map(({ question }) => question)
        .filter((question) => question.kind === kind && !chosen.includes(question))
        .sort((one, other) => usesOf(one) - usesOf(other));
      if (next === undefined) continue;
      chosen.push(next);
      used.set(next.bars[0] ?? 0, usesOf(next) + 1);
    }
  }
  return chosen.sort((one, other) => QUESTION_KINDS.indexOf(one.kind) - QUESTION_KINDS.indexOf(other.kind));
}
