import { type Change, changesOf } from '../changes';
import { isSilentOnOne } from '../hearing';
import { type BarModel, barsNear } from '../model';
import { isHome, type Tone } from '../tones';
import { itselfAndNext, type Rule, TEACHERS_LIST, type Whole } from './types';

const hasHomeOn = (tones: readonly Tone[], tick: number): boolean =>
  tones.some((tone) => tone.start === tick && isHome(tone));

/** Whether beat one may be asked for at all: a bar that begins without a chord may begin empty. */
const expectsOne = (bar: BarModel): boolean =>
  bar.stretches[0]?.chord !== null && bar.stretches[0] !== undefined;

/** Silent ones at the beginning of a section, and after a bar that was silent on its one. */
function silentPlaces({ model, heard }: Whole, near?: ReadonlySet<number>): readonly number[] {
  const silent = (bar: BarModel) => expectsOne(bar) && isSilentOnOne(heard[bar.index] ?? []);
  return barsNear(model, near).flatMap((bar) => {
    if (!silent(bar)) return [];
    const running = bar.before.some((index) => {
      const before = model.bars[index];
      return before !== undefined && silent(before);
    });
    return bar.opensSection || running ? [bar.index] : [];
  });
}

/** Two chord changes one after the other that both begin without their root. */
function rootlessPlaces({ model, heard }: Whole, near?: ReadonlySet<number>): readonly number[] {
  const changes = changesOf(model);
  const lacks = ({ bar, stretch }: Change) => !hasHomeOn(heard[bar.index] ?? [], stretch.start);
  return changes.flatMap((change, place) => {
    const before = changes[(place + changes.length - 1) % changes.length];
    if (!before || changes.length < 2 || near?.has(change.bar.index) === false) return [];
    return lacks(before) && lacks(change) ? [change.bar.index] : [];
  });
}

const places = (line: Whole, near?: ReadonlySet<number>): readonly number[] => [
  ...silentPlaces(line, near),
  ...rootlessPlaces(line, near),
];

export const DOWNBEAT: Rule = {
  number: 9,
  rule: 'Beat one is never silent in two bars running or where a section begins, and two chord changes running do not both lack their root.',
  source: TEACHERS_LIST,
  heard: 'beat one is silent where the ear needs it, or two chord changes pass without their root',
  mend: 'put the root on one',
  caution: { own: 'here the ear misses the root on beat one, so keep it for a variation', entering: null },
  alone: null,
  meeting: null,
  tied: null,
  whole: { places, concerns: (line, bar) => places(line, itselfAndNext(bar)).length > 0 },
};
