import { TICKS_PER_QUARTER } from '../../base';
import { hasMajorThird, hasMinorThird } from '../harmony';
import { type BarModel, isStrongBeat } from '../model';
import type { Tone } from '../tones';
import { NO_CAUTION, type Rule, TEACHERS_LIST } from './types';

const EIGHTH = TICKS_PER_QUARTER / 2;

function grates(bar: BarModel, { stretch, member, interval, start, duration }: Tone): boolean {
  if (!stretch?.chord || member) return false;
  if (hasMajorThird(stretch) && interval === 5 && isStrongBeat(bar, start)) return true;
  const wrongThird = (hasMajorThird(stretch) && interval === 3) || (hasMinorThird(stretch) && interval === 4);
  return wrongThird && duration > EIGHTH;
}

export const WRONG_NOTES: Rule = {
  number: 2,
  rule: 'No natural fourth over a major chord on beats 1 or 3; no third of the wrong kind longer than an eighth.',
  source: TEACHERS_LIST,
  heard: 'a fourth or a third of the wrong kind stands out against the chord',
  mend: 'take the chord’s own third',
  caution: NO_CAUTION,
  alone: ({ bar, tones }) => tones.some((tone) => grates(bar, tone)),
  inParts: true,
  meeting: null,
  tied: null,
  whole: null,
};
