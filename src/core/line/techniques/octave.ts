import type { Claim, Scene } from '../claim';
import type { Tone } from '../tones';
import { COMMON_PRACTICE, type TechniqueRow } from './types';

/** The first note that is reached by an octave within its bar; −1 where there is none. */
const octaveIn = (tones: readonly Tone[]): number =>
  tones.findIndex((tone, place) => Math.abs(tone.midi - (tones[place - 1]?.midi ?? tone.midi)) === 12);

export const leapsAnOctave = (tones: readonly Tone[]): boolean => octaveIn(tones) >= 0;

/** Not said beside an anticipation, which is the more telling of the two. */
function claim({ tones, facts }: Scene): Claim | null {
  if (facts.techniques.includes('anticipation')) return null;
  const note = octaveIn(tones);
  return note >= 0 ? { kind: 'octave', note } : null;
}

export const OCTAVE: TechniqueRow = {
  technique: 'octave',
  from: 1,
  source: COMMON_PRACTICE,
  hint: 'the root up high',
  belongs: ({ bassRole }) => bassRole.mayPump,
  always: false,
  allows: ['octave leap'],
  place: 'answer',
  recognise: ({ tones }) => leapsAnOctave(tones),
  recognisePart: ({ tones, next }) => leapsAnOctave(next ? [...tones, next] : tones),
  mayShow: ({ offsets }) =>
    offsets.some((offset, index) => Math.abs(offset - (offsets[index - 1] ?? offset)) === 12),
  lead: null,
  telling: 3,
  claim,
};
