import { isSilentOnOne } from '../hearing';
import { type BarModel, barsNear, changesAtStart } from '../model';
import { freedomsOf } from '../techniques/table';
import { itselfAndNext, type Rule, TEACHERS_LIST, type Whole } from './types';

/** A line leaves beat one empty by habit where so many of its bars do. */
const HABIT = 0.75;

/** Whether a bar begins with a chord and leaves its beat one empty. */
const isSilent = ({ heard }: Whole, bar: BarModel): boolean =>
  bar.stretches[0] !== undefined && bar.stretches[0].chord !== null && isSilentOnOne(heard[bar.index] ?? []);

function isHabit(line: Whole): boolean {
  const written = line.model.bars.filter(({ index }) => (line.heard[index]?.length ?? 0) > 0);
  return written.filter((bar) => isSilent(line, bar)).length >= HABIT * written.length;
}

/** Whether the teacher asks for a silent beat one in a bar; that speaks before the rule. */
export const isWished = ({ demands }: BarModel): boolean => freedomsOf(demands.wanted).has('silent beat one');

/** Whether a silent beat one answers a bar that sounds on its own, inside a section. */
const isAnswer = (line: Whole, bar: BarModel): boolean =>
  !bar.opensSection &&
  bar.before.every((index) => {
    const before = line.model.bars[index];
    return before === undefined || !isSilent(line, before);
  });

function places(line: Whole, near?: ReadonlySet<number>): readonly number[] {
  const { model } = line;
  const silent = barsNear(model, near).filter(
    (bar) => isSilent(line, bar) && (bar.opensSection || changesAtStart(model, bar)) && !isWished(bar),
  );
  if (silent.length === 0) return [];
  const habit = isHabit(line);
  return silent.flatMap((bar) => {
    const leavesItEmpty =
      model.request.feel.bassRole.mayRestOnOne || bar.demands.freedoms.has('silent beat one');
    return leavesItEmpty && (habit || isAnswer(line, bar)) ? [] : [bar.index];
  });
}

export const DOWNBEAT: Rule = {
  number: 9,
  rule: 'Beat one is silent on a chord change only as the answer to a bar that sounds on its one or as the habit of the whole line, and only in feels that leave it empty or where the teacher allows it.',
  source: TEACHERS_LIST,
  heard: 'beat one is silent where the ear needs the new chord',
  mend: 'put the root on one',
  caution: { own: 'here the ear misses the root on beat one, so keep it for a variation', entering: null },
  alone: null,
  inParts: false,
  meeting: null,
  tied: null,
  whole: { places, concerns: (line, bar) => places(line, itselfAndNext(bar)).length > 0 },
};
