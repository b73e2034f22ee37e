import { halfStepsAboveC, type SpelledName } from '../base';
import { degreeOf, formatDegree, nameOfDegree } from './degrees';
import { keyNames } from './keys';
import { hasMinorThird } from './modes';
import { stepOfName } from './names';
import type { Chord, ChordFamily, Degree, Key, Scale } from './types';

type Pattern = readonly [string, string, string, string, string, string, string];

/**
 * Names of seven-note scales by their degrees. Church modes, harmonic minor and ascending melodic minor: Open
 * Music Theory, "Scales" and "Diatonic modes" (CC BY-SA 4.0); the modes of the two minor scales go by their
 * usual names in jazz teaching (common practice, no source).
 */
const SCALE_NAMES: readonly { readonly name: string; readonly pattern: Pattern }[] = [
  { name: 'major', pattern: ['R', '2', '3', '4', '5', '6', '7'] },
  { name: 'dorian', pattern: ['R', '2', '♭3', '4', '5', '6', '♭7'] },
  { name: 'phrygian', pattern: ['R', '♭2', '♭3', '4', '5', '♭6', '♭7'] },
  { name: 'lydian', pattern: ['R', '2', '3', '♯4', '5', '6', '7'] },
  { name: 'mixolydian', pattern: ['R', '2', '3', '4', '5', '6', '♭7'] },
  { name: 'natural minor', pattern: ['R', '2', '♭3', '4', '5', '♭6', '♭7'] },
  { name: 'locrian', pattern: ['R', '♭2', '♭3', '4', '♭5', '♭6', '♭7'] },
  { name: 'harmonic minor', pattern: ['R', '2', '♭3', '4', '5', '♭6', '7'] },
  { name: 'melodic minor', pattern: ['R', '2', '♭3', '4', '5', '6', '7'] },
  { name: 'phrygian dominant', pattern: ['R', '♭2', '3', '4', '5', '♭6', '♭7'] },
  { name: 'lydian dominant', pattern: ['R', '2', '3', '♯4', '5', '6', '♭7'] },
  { name: 'altered', pattern: ['R', '♭2', '♯2', '3', '♭5', '♯5', '♭7'] },
];

/** What fits a chord that stands outside its key, by family (common practice, no source). */
const BY_FAMILY: Readonly<Record<ChordFamily, readonly Degree['alteration'][]>> = {
  major: [0, 0, 0, 1, 0, 0, 0],
  minor: [0, 0, -1, 0, 0, 0, -1],
  dominant: [0, 0, 0, 0, 0, 0, -1],
  diminished: [0, 0, -1, 0, -1, -1, -2],
  'half-diminished': [0, -1, -1, 0, -1, -1, -1],
  augmented: [0, 0, 0, 1, 1, 0, 0],
  suspended: [0, 0, 0, 0, 0, 0, -1],
};

const STEPS: readonly Degree['step'][] = [1, 2, 3, 4, 5, 6, 7];
const ALTERED: readonly Degree[] = [
  { step: 1, alteration: 0 },
  { step: 2, alteration: -1 },
  { step: 2, alteration: 1 },
  { step: 3, alteration: 0 },
  { step: 5, alteration: -1 },
  { step: 5, alteration: 1 },
  { step: 7, alteration: -1 },
];

/** The chord's own note on a scale step; the first in order of thirds where it has two (♭9 and ♯9). */
const toneOnStep = (chord: Chord, step: Degree['step']): SpelledName | undefined =>
  chord.tones.find((tone) => tone.degree.step === step)?.name;

/** Seven names from the chord's root, its own notes where it has them, the others from `fill`. */
const withTones = (chord: Chord, fill: (step: Degree['step']) => SpelledName): readonly SpelledName[] =>
  STEPS.map((step) => toneOnStep(chord, step) ?? fill(step));

const onKey = (chord: Chord, key: Key): readonly SpelledName[] => {
  const names = keyNames(key);
  return withTones(chord, (step) => {
    const letterStep = (stepOfName(chord.root) + step - 1) % 7;
    return names.find((name) => stepOfName(name) === letterStep) ?? chord.root;
  });
};

/** Half steps from each name of a scale to the next, the octave last. */
const gapsOf = (names: readonly SpelledName[]): readonly number[] =>
  names.map((name, index) => {
    const next = names[(index + 1) % names.length] ?? name;
    const gap = halfStepsAboveC(next) - halfStepsAboveC(name);
    return ((((gap + 6) % 12) + 12) % 12) - 6;
  });

/** Rising all the way, with at most `augmented` gaps of three half steps. */
const isScale = (names: readonly SpelledName[], augmented: number): boolean => {
  const gaps = gapsOf(names);
  return (
    gaps.every((gap) => gap >= 1 && gap <= 3) &&
    gaps.reduce((sum, gap) => sum + gap, 0) === 12 &&
    gaps.filter((gap) => gap === 3).length <= augmented
  );
};

/**
 * The scale that fits a chord in its place: the key's notes from the chord's root, bent where the chord asks
 * for it. C7 in F major gives C mixolydian; V7 in minor raises the leading tone; F7 in F major has E♭.
 *
 * Tried in this order, the first that is a scale wins: the key as it stands; the parallel key, which borrowed
 * chords come from; the family's own scale. An augmented second counts as a fault unless it is the sixth and
 * raised seventh of a minor key, where dominants and diminished chords on the key's own notes live.
 */
export function scaleFor(chord: Chord, key: Key): Scale {
  const names = namesFor(chord, key);
  return { kind: kindOf(chord.root, names), names };
}

function namesFor(chord: Chord, key: Key): readonly SpelledName[] {
  const hasTone = (alteration: Degree['alteration']) =>
    chord.tones.some(({ degree }) => degree.step === 2 && degree.alteration === alteration);
  if (chord.family === 'dominant' && hasTone(-1) && hasTone(1)) {
    return ALTERED.map((degree) => nameOfDegree(chord.root, degree));
  }
  const leadsOn =
    chord.family === 'dominant' || chord.family === 'diminished' || chord.family === 'augmented';
  const inKey = keyNames(key).some(
    (name) => degreeOf(name, chord.root).step === 1 && degreeOf(name, chord.root).alteration === 0,
  );
  const majorFive = key.mode === 'minor' && chord.family === 'major';
  const allowed = (leadsOn && (inKey || chord.family === 'diminished')) || majorFive ? 1 : 0;
  const parallel: Key = { tonic: key.tonic, mode: hasMinorThird(key.mode) ? 'major' : 'minor' };
  const own = BY_FAMILY[chord.family];
  const candidates: readonly (readonly SpelledName[])[] = [onKey(chord, key), onKey(chord, parallel)];
  return (
    candidates.find((names, index) => isScale(names, index === 0 ? allowed : 0)) ??
    withTones(chord, (step) => nameOfDegree(chord.root, { step, alteration: own[step - 1] ?? 0 }))
  );
}

/** The trade's name, or the nearest mode with what differs: `mixolydian ♭6`. */
function kindOf(root: SpelledName, names: readonly SpelledName[]): string {
  const degrees = names.map((name) => formatDegree(degreeOf(name, root)));
  const differences = SCALE_NAMES.map(({ name, pattern }) => ({
    name,
    differing: degrees.filter((degree, step) => degree !== pattern[step]),
  }));
  const nearest = differences.reduce((best, other) =>
    other.differing.length < best.differing.length ? other : best,
  );
  return [nearest.name, ...nearest.differing].join(' ');
}
