import type { Claim, Scene } from '../claim';
import { isSilentOnOne } from '../hearing';
import { COMMON_PRACTICE, type TechniqueRow } from './types';

/** The silence: which note enters, and whether the bar answers one that sounds on its one. */
function claim({ heard, bar, tones, facts }: Scene): Claim | null {
  const first = tones[0];
  if (!first || !facts.techniques.includes('beat one silent')) return null;
  const before = bar.before.length === 1 ? bar.before[0] : undefined;
  const asked =
    before !== undefined &&
    before === bar.index - 1 &&
    (heard[before]?.length ?? 0) > 0 &&
    !isSilentOnOne(heard[before] ?? []);
  return { kind: 'silent one', enters: first.start, answers: asked ? before : null };
}

export const SILENT_ONE: TechniqueRow = {
  technique: 'beat one silent',
  from: 0,
  source: COMMON_PRACTICE,
  hint: 'a rest there',
  belongs: ({ bassRole }) => bassRole.mayRestOnOne,
  always: false,
  allows: ['silent beat one'],
  place: 'answer',
  // A pickup, the end of a bar, has no beat one.
  recognise: ({ bar, tones }) =>
    !bar.pickup && tones.length > 0 && isSilentOnOne(tones) && bar.stretches[0]?.chord !== null,
  recognisePart: ({ opens, tones }) => opens && (tones[0]?.start ?? 0) > 0,
  mayShow: ({ silentOne }) => silentOne,
  lead: null,
  telling: 1,
  claim,
};
