import type { Claim, Scene } from '../claim';
import { isSilentOnOne, silenceOf } from '../hearing';
import { COMMON_PRACTICE, type Seen, type TechniqueRow } from './types';

/** A silent beat one under a chord, or half a bar of silence. */
function recognise({ bar, tones }: Seen): boolean {
  if (tones.length === 0) return false;
  const silent = isSilentOnOne(tones) && bar.stretches[0]?.chord !== null;
  return silent || silenceOf(tones, bar.ticks).longest * 2 >= bar.ticks;
}

/** The silence: an empty beat one, or half a bar and more. */
function claim({ heard, bar, tones, facts }: Scene): Claim | null {
  const first = tones[0];
  if (!first || !facts.techniques.includes('space')) return null;
  if (isSilentOnOne(tones)) {
    const before = bar.before.length === 1 ? bar.before[0] : undefined;
    const asked =
      before !== undefined &&
      before === bar.index - 1 &&
      (heard[before]?.length ?? 0) > 0 &&
      !isSilentOnOne(heard[before] ?? []);
    return { kind: 'silent one', enters: first.start, answers: asked ? before : null };
  }
  const beats = Math.floor(silenceOf(tones, bar.ticks).longest / bar.beat);
  return beats > 0 ? { kind: 'silence', beats } : null;
}

export const SPACE: TechniqueRow = {
  technique: 'space',
  from: 0,
  source: COMMON_PRACTICE,
  hint: 'beat one left silent',
  core: true,
  always: false,
  allows: ['silent beat one', 'long silence'],
  leads: [],
  place: 'breath',
  recognise,
  telling: 1,
  claim,
};
