import type { Claim, Scene } from '../claim';
import { isSilentOnOne, silenceOf } from '../hearing';
import { COMMON_PRACTICE, type Seen, type TechniqueRow } from './types';

/** Half a bar of silence in one piece; of a pickup, the end of a bar, it is not told. */
const recognise = ({ bar, tones }: Seen): boolean =>
  !bar.pickup && tones.length > 0 && silenceOf(tones, bar.ticks).longest * 2 >= bar.ticks;

/** How many beats are silent; a bar that enters late says so by its beat one. */
function claim({ bar, tones, facts }: Scene): Claim | null {
  if (!facts.techniques.includes('long silences')) return null;
  if (isSilentOnOne(tones) && facts.techniques.includes('beat one silent')) return null;
  const beats = Math.floor(silenceOf(tones, bar.ticks).longest / bar.beat);
  return beats > 0 ? { kind: 'silence', beats } : null;
}

/** From this weight on, space belongs to a feel. */
const LIVES_ON_SPACE = 0.5;

export const LONG_SILENCES: TechniqueRow = {
  technique: 'long silences',
  from: 0,
  source: COMMON_PRACTICE,
  hint: 'half a bar or more',
  belongs: ({ weights }) => weights.space >= LIVES_ON_SPACE,
  always: false,
  allows: ['long silence'],
  place: 'breath',
  recognise,
  // A silence is told of a whole bar.
  recognisePart: () => false,
  mayShow: ({ longestSilence }) => longestSilence >= 0.5,
  lead: null,
  telling: 1.5,
  claim,
};
