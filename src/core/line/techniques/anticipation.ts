import type { Claim, Scene } from '../claim';
import { COMMON_PRACTICE, type Seen, type TechniqueRow } from './types';

const recognise = ({ functions }: Seen): boolean => functions.includes('anticipation');

function claim({ facts }: Scene): Claim | null {
  const note = facts.notes.findIndex(({ function: role }) => role === 'anticipation');
  return note >= 0 ? { kind: 'anticipation', note } : null;
}

export const ANTICIPATION: TechniqueRow = {
  technique: 'anticipation',
  from: 3,
  source: COMMON_PRACTICE,
  hint: 'the next root early',
  belongs: () => false,
  always: false,
  allows: ['early root'],
  place: 'turn',
  recognise,
  recognisePart: recognise,
  mayShow: () => false,
  lead: 'early',
  telling: 2,
  claim,
};
