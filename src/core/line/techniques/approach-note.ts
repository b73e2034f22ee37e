import { isOutsideScale } from '../tones';
import { leadClaim, walkClaim } from './leading';
import { COMMON_PRACTICE, type Seen, type TechniqueRow } from './types';

/** A note that only leads on: entered by leap and left by step, the fifth of what comes, or outside the scale. */
const recognise = ({ tones, functions }: Seen): boolean =>
  tones.some((tone, index) => {
    const role = functions[index];
    return role === 'approach' || (role && role !== 'anticipation' ? isOutsideScale(tone) : false);
  });

export const APPROACH_NOTE: TechniqueRow = {
  technique: 'approach note',
  from: 4,
  source: COMMON_PRACTICE,
  hint: 'to a chord tone',
  belongs: () => false,
  always: false,
  allows: ['notes outside the scale'],
  place: 'turn',
  recognise,
  recognisePart: recognise,
  mayShow: () => false,
  lead: 'approach',
  telling: 5,
  claim: (scene) => (walkClaim(scene) ? null : leadClaim(scene)),
};
