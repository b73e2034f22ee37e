import { pitchClassOf, type SpelledName } from '../../base';
import type { Role } from '../../feel';
import { nameOfDegree } from '../../theory';
import type { Stretch } from '../harmony';

/**
 * The steps that the roles of a contour climb, counted from the note under the chord: the root, or the bass note
 * of a slash chord, from which the chord's scale is turned round. Pitch classes are absolute, 0–11.
 */
export interface Ladder {
  /** Class of the anchor. */
  readonly home: number;
  /** Half steps of steps 1–7 above the anchor; null where the scale leaves one out. */
  readonly steps: readonly (number | null)[];
  readonly colour: number | null;
  /** The colour is the chord's own seventh, not a note added to it. */
  readonly ownSeventh: boolean;
  readonly third: number | null;
  readonly minorThird: boolean;
  /** By pitch class. */
  readonly scale: readonly boolean[];
  readonly tones: readonly boolean[];
  readonly names: readonly (SpelledName | null)[];
  /** Class of the chord's root, and of its fifth. */
  readonly root: number;
  readonly fifth: number | null;
  readonly altered: boolean;
  readonly label: string;
}

const known = new WeakMap<Stretch, Ladder | null>();
const wrap = (halfSteps: number): number => ((halfSteps % 12) + 12) % 12;

/** The ladder of a stretch; null without a chord. */
export function ladderOf(stretch: Stretch): Ladder | null {
  const found = known.get(stretch);
  if (found !== undefined) return found;
  const made = makeLadder(stretch);
  known.set(stretch, made);
  return made;
}

/** Steps from a bass note that is a note of the chord's scale, or stands outside it. */
function turned(
  scale: readonly number[],
  tones: readonly number[],
): { steps: (number | null)[]; colour: number | null } {
  const at = (place: number): number | null => scale[place] ?? null;
  const steps: (number | null)[] = [0, at(1), at(2), at(3), at(4), at(5), at(6)];
  const third = tones.find((tone) => tone >= 3) ?? null;
  const fifth = tones.find((tone) => tone >= 5 && tone > (third ?? 0)) ?? third;
  steps[2] = third ?? steps[2] ?? null;
  steps[4] = fifth ?? steps[4] ?? null;
  const colour = tones.find((tone) => tone > (fifth ?? 0)) ?? steps[5] ?? null;
  return { steps, colour };
}

// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of cases, read from top to bottom
function makeLadder(stretch: Stretch): Ladder | null {
  const { chord, rootClass, homeClass } = stretch;
  if (!chord) return null;
  const names: (SpelledName | null)[] = Array.from({ length: 12 }, () => null);
  const scale = Array.from({ length: 12 }, () => false);
  const tones = Array.from({ length: 12 }, () => false);
  for (const step of stretch.steps) {
    if (!step) continue;
    scale[wrap(rootClass + step.halfSteps)] = true;
    names[wrap(rootClass + step.halfSteps)] = step.name;
  }
  for (const tone of chord.tones) {
    tones[pitchClassOf(tone.name)] = true;
    scale[pitchClassOf(tone.name)] = true;
    names[pitchClassOf(tone.name)] = tone.name;
  }
  names[homeClass] = chord.bass;
  tones[homeClass] = true;
  scale[homeClass] = true;
  const half = (step: number): number | null => stretch.steps[step - 1]?.halfSteps ?? null;
  const isTone = (step: number): boolean => stretch.steps[step - 1]?.member === true;
  const sharpFive = chord.tones.some(({ degree }) => degree.step === 5 && degree.alteration !== 0);
  const fifthTone = chord.tones.find(({ degree }) => degree.step === 5);
  const common = {
    home: homeClass,
    scale,
    tones,
    names,
    root: rootClass,
    fifth: fifthTone ? pitchClassOf(fifthTone.name) : null,
    altered: sharpFive,
    label: stretch.label,
    minorThird: isTone(3) && half(3) === 3,
  };
  if (homeClass === rootClass) {
    const steps = [1, 2, 3, 4, 5, 6, 7].map(half);
    const third = isTone(3) ? half(3) : isTone(4) ? half(4) : isTone(2) ? half(2) : half(3);
    const own = isTone(7);
    const colour = own ? half(7) : common.minorThird && !sharpFive ? 10 : half(6);
    if (colour === 10 && !own)
      names[wrap(rootClass + 10)] ??= nameOfDegree(chord.root, { step: 7, alteration: -1 });
    steps[2] = third;
    return { ...common, steps, colour, ownSeventh: own, third };
  }
  const above = (flags: readonly boolean[]): number[] =>
    Array.from({ length: 12 }, (_, place) => place).filter((place) => flags[wrap(homeClass + place)]);
  const { steps, colour } = turned(
    above(scale),
    above(tones).filter((place) => place > 0),
  );
  return { ...common, steps, colour, ownSeventh: false, third: steps[2] ?? null };
}

/** Half steps of a role above the anchor; null where the chord has no such note. `=` has none of its own. */
export function offsetOf(ladder: Ladder, role: Role, blues: boolean): number | null {
  switch (role.kind) {
    case 'repeat':
      return null;
    case 'colour':
      return ladder.colour === null ? null : ladder.colour + 12 * role.octave;
    case 'blue third':
      return ladder.third === 4 ? 3 + 12 * role.octave : null;
    case 'sharp fourth':
      return ladder.steps[4] === 7 && ladder.steps[3] === 5 ? 6 + 12 * role.octave : null;
    case 'step': {
      const half = ladder.steps[(role.step - 1) % 7];
      if (half === null || half === undefined) return null;
      const own = blues && ladder.home === ladder.root;
      const seventh = (role.step - 1) % 7 === 6 && own && !ladder.ownSeventh;
      // A blues has the major sixth over each of its chords, whatever key its sevenths may point to.
      const sixth = (role.step - 1) % 7 === 5 && own && ladder.third === 4;
      return (seventh ? 10 : sixth ? 9 : half) + 12 * (Math.floor((role.step - 1) / 7) + role.octave);
    }
  }
}

/** A number of scale steps from a pitch, which counts as a step wherever it lies. */
export function scaleSteps(scale: readonly boolean[], from: number, count: number): number {
  let pitch = from;
  for (let step = 0; step < Math.abs(count); step += 1) {
    do pitch += Math.sign(count);
    while (!scale[wrap(pitch)] && Math.abs(pitch - from) < 24);
  }
  return pitch;
}
