import { changesBetween } from '../model';
import { isHome } from '../tones';
import { type Rule, TEACHERS_LIST } from './types';

export const EARLY_ROOT: Rule = {
  number: 6,
  rule: 'The next root is not sounded last and struck again on one, unless anticipations are on.',
  source: TEACHERS_LIST,
  heard: 'the next root sounds before the bar line and is struck again on one',
  mend: 'lead into it with another note',
  caution: {
    own: 'the next root is heard before the bar line',
    entering: 'the bar before ends on its root already',
  },
  alone: null,
  inParts: false,
  meeting: ({ model, from, exit, to, entry }) => {
    if (model.freedoms.has('early root') || !changesBetween(from, to)) return false;
    const { last } = exit;
    const { first } = entry;
    // A chord on the same root does not come early when that root sounds last.
    const own = isHome(last) || last.interval === 0;
    return !own && first.start === 0 && isHome(first) && (first.midi - last.midi) % 12 === 0;
  },
  tied: null,
  whole: null,
};
