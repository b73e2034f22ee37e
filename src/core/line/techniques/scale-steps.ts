import type { Claim, Scene } from '../claim';
import { isOutsideScale } from '../tones';
import type { NoteFunction } from '../types';
import { walkClaim } from './leading';
import { COMMON_PRACTICE, type Drawn, type Seen, type TechniqueRow } from './types';

const STEPS: ReadonlySet<NoteFunction | null | undefined> = new Set(['passing', 'neighbour', 'scale step']);

const recognise = ({ tones, functions }: Seen): boolean =>
  tones.some((tone, index) => STEPS.has(functions[index]) && !isOutsideScale(tone));

/** A note outside the chord that is entered by step, and left by step where another follows. */
const mayShow = ({ offsets, members }: Drawn): boolean =>
  offsets.some((offset, index) => {
    const [before, next] = [offsets[index - 1], offsets[index + 1]];
    if (before === undefined || members[index]) return false;
    return Math.abs(offset - before) <= 2 && (next === undefined || Math.abs(next - offset) <= 2);
  });

/** The first note outside the chord and where it moves. */
function stepClaim({ tones, facts }: Scene): Claim | null {
  const note = facts.notes.findIndex(({ function: role }) => STEPS.has(role));
  const [tone, before, after] = [tones[note], tones[note - 1], tones[note + 1]];
  if (!tone) return null;
  const role = facts.notes[note]?.function;
  if (role === 'passing' && before && after && before.midi !== tone.midi && after.midi !== tone.midi)
    return { kind: 'passing', note };
  return role === 'neighbour' && before && before.midi !== tone.midi
    ? { kind: 'neighbour', note }
    : { kind: 'step', note };
}

export const SCALE_STEPS: TechniqueRow = {
  technique: 'scale steps',
  from: 3,
  source: COMMON_PRACTICE,
  hint: 'into the next chord',
  belongs: () => true,
  always: false,
  allows: ['notes outside the chord'],
  place: 'turn',
  recognise,
  recognisePart: recognise,
  mayShow,
  lead: 'step',
  telling: 4,
  claim: (scene) =>
    walkClaim(scene) ?? (scene.facts.techniques.includes('scale steps') ? stepClaim(scene) : null),
};
