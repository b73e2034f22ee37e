import { pitchClassOf } from '../base';
import type { Stretch } from './harmony';
import type { BarModel } from './model';
import { isDominantApproach, isStep, type Tone } from './tones';
import type { NoteFunction } from './types';

/** A bar that can follow: its first harmony and its first note. */
export interface Ahead {
  readonly stretch: Stretch | undefined;
  readonly first: Tone | null;
}

/** What sounds just before and just after a bar: several where repeats lead in or out differently. */
export interface Around {
  readonly before: readonly (Tone | null)[];
  readonly ahead: readonly Ahead[];
}

const all = (tones: readonly (Tone | null)[], test: (tone: Tone) => boolean): boolean =>
  tones.length > 0 && tones.every((tone) => tone !== null && test(tone));

/** Whether a bar's last note stands in its last beat for the root of every chord that can come next. */
function isAnticipation(bar: BarModel, tone: Tone, { ahead }: Around): boolean {
  if (tone.start < bar.ticks - bar.beat) return false;
  return (
    ahead.length > 0 &&
    ahead.every(({ stretch, first }) => {
      if (!stretch?.chord || stretch.label === tone.stretch?.label) return false;
      if (pitchClassOf(tone.name) !== stretch.homeClass) return false;
      return first === null || first.start > 0 || first.midi === tone.midi;
    })
  );
}

/**
 * What a note does. The non-chord tones are those of Open Music Theory: a passing tone is entered and left by
 * step in one direction, a neighbour by step there and back; a note entered by leap and left by step into the
 * next chord is the bass player's approach note (there an incomplete neighbour or appoggiatura), and so is the
 * fifth of the next root at the end of a bar (common practice, no source).
 */
function functionIn(
  bar: BarModel,
  tones: readonly Tone[],
  index: number,
  around: Around,
): NoteFunction | null {
  const tone = tones[index];
  if (!tone?.stretch?.chord) return null;
  if (tone.member) return 'chord tone';
  const last = index === tones.length - 1;
  if (last && isAnticipation(bar, tone, around)) return 'anticipation';
  const previous = tones.slice(0, index).findLast((other) => other.midi !== tone.midi);
  const following = tones.slice(index + 1).find((other) => other.midi !== tone.midi);
  const before = previous ? [previous] : around.before;
  const after = following ? [following] : around.ahead.map(({ first }) => first);
  if (last && all(after, (other) => isDominantApproach(tone, other))) return 'approach';
  if (!all(after, (other) => isStep(tone.midi, other.midi))) return 'scale step';
  if (!all(before, (other) => isStep(other.midi, tone.midi))) return 'approach';
  const rising = all(before, (other) => other.midi < tone.midi);
  const falling = all(before, (other) => other.midi > tone.midi);
  const goesUp = all(after, (other) => other.midi > tone.midi);
  const goesDown = all(after, (other) => other.midi < tone.midi);
  if ((rising && goesUp) || (falling && goesDown)) return 'passing';
  return (rising && goesDown) || (falling && goesUp) ? 'neighbour' : 'scale step';
}

/** What each note of a bar does. */
export const functionsIn = (
  bar: BarModel,
  tones: readonly Tone[],
  around: Around,
): readonly (NoteFunction | null)[] => tones.map((_, index) => functionIn(bar, tones, index, around));
