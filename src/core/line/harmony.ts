import { halfStepsAboveC, pitchClassOf, remembered, type SpelledName, type SpelledPitch } from '../base';
import type { Harmony, HarmonySpan } from '../chart';
import { type Chord, degreeOf, type Key, scaleFor, shortened } from '../theory';
import type { Demands } from './demands';

/** A step of the scale above a chord's root. */
export interface StepTone {
  readonly name: SpelledName;
  /** Half steps above the root, 0–11. */
  readonly halfSteps: number;
  readonly member: boolean;
}

/** A stretch of one harmony inside a bar, with everything that is asked about it often. */
export interface Stretch {
  readonly index: number;
  readonly start: number;
  readonly end: number;
  /** Tells harmonies apart: the chord's symbol, or what was written. */
  readonly label: string;
  readonly chord: Chord | null;
  /** What was written where no chord is understood, shortened for a sentence; else null. */
  readonly unknown: string | null;
  /** Tonic and mode of the key in force. */
  readonly key: Key;
  readonly rootClass: number;
  /** The note that belongs under the chord: the slash bass, else the root. */
  readonly homeClass: number;
  readonly home: SpelledName | null;
  readonly demands: Demands;
  /** Seven steps up from the root, null where the scale leaves one out; empty without a chord. */
  readonly steps: readonly (StepTone | null)[];
  /** The same as the key has them, whatever the chords around say. */
  readonly keySteps: readonly (StepTone | null)[];
  /** By half steps above the root: whether the note belongs to the chord (the slash bass does). */
  readonly members: readonly boolean[];
}

export const classAbove = (midi: number, rootClass: number): number => (((midi - rootClass) % 12) + 12) % 12;

/** Whether a chord has the one third and not the other as well. */
export const hasMajorThird = ({ members }: Stretch): boolean => members[4] === true && members[3] !== true;
export const hasMinorThird = ({ members }: Stretch): boolean => members[3] === true && members[4] !== true;

/** A name as a pitch at a MIDI number of its class; null when the number belongs to another name. */
export function pitchAt(name: SpelledName, midi: number): SpelledPitch | null {
  const octaves = (midi - halfStepsAboveC(name)) / 12 - 1;
  return Number.isInteger(octaves)
    ? { letter: name.letter, alteration: name.alteration, octave: octaves }
    : null;
}

const labelOf = (harmony: Harmony): string =>
  harmony.kind === 'chord' ? harmony.chord.symbol : harmony.kind === 'unknown' ? `? ${harmony.text}` : 'N.C.';

const STEPS = [1, 2, 3, 4, 5, 6, 7] as const;

function stepsOf(chord: Chord, key: Key): readonly (StepTone | null)[] {
  const root = pitchClassOf(chord.root);
  const names = scaleFor(chord, key).names;
  return STEPS.map((step) => {
    const tone = chord.tones.find(({ degree }) => degree.step === step);
    const name = tone?.name ?? names.find((other) => degreeOf(other, chord.root).step === step);
    return name
      ? { name, halfSteps: classAbove(pitchClassOf(name), root), member: tone !== undefined }
      : null;
  });
}

/** Steps by key and neighbours for chords that are still in use: the same few are read again at every key press. */
const stepsByChord = new WeakMap<Chord, Map<string, readonly (StepTone | null)[]>>();

function rememberedSteps(
  chord: Chord,
  key: Key,
  near: readonly (Chord | null)[],
): readonly (StepTone | null)[] {
  const known = remembered(stepsByChord, chord, () => new Map<string, readonly (StepTone | null)[]>());
  const around = near.map((other) => other?.symbol ?? '').join(' ');
  return remembered(known, `${key.tonic.letter}${key.tonic.alteration}${key.mode} ${around}`, () =>
    near.reduceRight<readonly (StepTone | null)[]>(
      (steps, other) => (other ? bentTowards(steps, chord, other) : steps),
      stepsOf(chord, key),
    ),
  );
}

/** Places of the third and the fourth among the steps. */
const THIRD = 2;
const FOURTH = 3;

/**
 * Steps that the chord leaves open, as a neighbouring chord sounds them: D minor before G7 has the B of G7, whatever the
 * key says (common practice, no source). A chord on the same root is another colour of it; a minor chord does not take the leading tone of its own dominant, and nothing
 * is taken that makes a gap of three half steps.
 */
function bentTowards(
  steps: readonly (StepTone | null)[],
  chord: Chord,
  other: Chord,
): readonly (StepTone | null)[] {
  const root = pitchClassOf(chord.root);
  if (root === pitchClassOf(other.root)) return steps;
  const bent = steps.map((step, index): StepTone | null => {
    // The third that a suspended chord leaves out is its own, whatever sounds around it.
    if (!step || step.member || index === THIRD) return step;
    const tone = other.tones.find(({ name }) => name.letter === step.name.letter);
    if (!tone) return step;
    const halfSteps = classAbove(pitchClassOf(tone.name), root);
    const leading = index === 6 && halfSteps === 11 && chord.family === 'minor';
    // A diminished chord passes: it does not raise the fourth of what it leads to.
    const passing = index === FOURTH && halfSteps === 6 && other.family === 'diminished';
    return leading || passing ? step : { ...step, name: tone.name, halfSteps };
  });
  const halves = bent.flatMap((step) => (step ? [step.halfSteps] : []));
  const gaps = halves.map((half, index) => (halves[index + 1] ?? 12) - half);
  return gaps.every((gap) => gap === 1 || gap === 2) ? bent : steps;
}

/** @param near chords around it that tell its scale, the weightiest first */
export function stretchOf(
  span: HarmonySpan,
  index: number,
  key: Key,
  demands: Demands,
  near: readonly (Chord | null)[] = [],
): Stretch {
  const chord = span.harmony.kind === 'chord' ? span.harmony.chord : null;
  const rootClass = chord ? pitchClassOf(chord.root) : 0;
  const members = Array.from({ length: 12 }, () => false);
  for (const tone of chord?.tones ?? []) members[classAbove(pitchClassOf(tone.name), rootClass)] = true;
  if (chord) members[classAbove(pitchClassOf(chord.bass), rootClass)] = true;
  return {
    index,
    start: span.start,
    end: span.start + span.duration,
    label: labelOf(span.harmony),
    chord,
    unknown: span.harmony.kind === 'unknown' ? shortened(span.harmony.text) : null,
    key,
    demands,
    rootClass,
    homeClass: chord ? pitchClassOf(chord.bass) : 0,
    home: chord?.bass ?? null,
    steps: chord ? rememberedSteps(chord, key, near) : [],
    keySteps: chord ? rememberedSteps(chord, key, []) : [],
    members,
  };
}

/** Joins neighbouring spans of the same harmony: a chord written twice in a bar is one chord to the line. */
export function mergedSpans(spans: readonly HarmonySpan[]): readonly HarmonySpan[] {
  const merged: HarmonySpan[] = [];
  for (const span of spans) {
    const last = merged.at(-1);
    if (last && labelOf(last.harmony) === labelOf(span.harmony)) {
      merged[merged.length - 1] = {
        ...last,
        duration: (last.duration + span.duration) as HarmonySpan['duration'],
      };
    } else merged.push(span);
  }
  return merged;
}
