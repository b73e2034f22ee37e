import { type SpelledName, sameName } from '../base';
import { degreeOf, nameOfDegree, sameDegree } from './degrees';
import { leadsTo } from './foreign-dominants';
import { keyNames } from './keys';
import { hasMinorThird } from './modes';
import { formatAlteration, formatName } from './names';
import { describeKeyIn, formatChordIn, formatNameIn, type Naming } from './naming';
import { FIGURES, romanOf } from './numerals';
import type { Chord, Degree, Key, Mode } from './types';

/** What a chord does in a key. */
export interface ChordFunction {
  /** Roman numeral with real signs: `V7/ii`, `♭VI`, `vii°7`. */
  readonly numeral: string;
  readonly kind: 'diatonic' | 'secondary dominant' | 'borrowed' | 'outside';
  /** One plain sentence for the teacher. */
  readonly sentence: string;
}

const hasDegree = (chord: Chord, step: Degree['step'], alteration: Degree['alteration']): boolean =>
  chord.tones.some(({ degree }) => sameDegree(degree, { step, alteration }));

const isMinorThird = (chord: Chord): boolean => hasDegree(chord, 3, -1);
const hasSeventh = (chord: Chord): boolean => chord.tones.some(({ degree }) => degree.step === 7);

/** Notes of the key; in minor the raised seventh too, where the chord leads home with it. */
function belongs(name: SpelledName, key: Key, chord: Chord): boolean {
  if (keyNames(key).some((own) => sameName(own, name))) return true;
  const leading = nameOfDegree(key.tonic, { step: 7, alteration: 0 });
  return key.mode === 'minor' && sameName(name, leading) && leadsHome(chord, key);
}

/** V with a major third, or a diminished chord on the leading tone. */
function leadsHome(chord: Chord, key: Key): boolean {
  const degree = degreeOf(chord.root, key.tonic);
  if (sameDegree(degree, { step: 5, alteration: 0 })) return hasDegree(chord, 3, 0);
  return sameDegree(degree, { step: 7, alteration: 0 }) && chord.family === 'diminished';
}

const isDiatonic = (chord: Chord, key: Key): boolean =>
  chord.tones.every(({ name }) => belongs(name, key, chord));

/** The numeral of the chord as it stands in the key, without looking where it leads. */
function plainNumeral(chord: Chord, key: Key): string {
  const degree = degreeOf(chord.root, key.tonic);
  const onKey = keyNames(key).some((own) => sameName(own, chord.root));
  const leading = chord.family === 'diminished' && degree.step === 7 && degree.alteration === 0;
  // A root that is raised against the minor signature gets a sharp, whatever the signature makes of it.
  const sign = onKey || leading ? '' : formatAlteration(degree.alteration) || '♯';
  return sign + romanOf(degree.step, isMinorThird(chord)) + quality(chord);
}

/** What follows the numeral: quality, seventh, figures of inversion. */
function quality(chord: Chord): string {
  const { sign, rest } = signAndRest(chord);
  const figure = inversionOf(chord);
  if (figure !== null && (rest === '' || rest === '7')) return sign + figure;
  return sign + rest;
}

function signAndRest(chord: Chord): { readonly sign: string; readonly rest: string } {
  const slash = sameName(chord.root, chord.bass) ? 0 : formatName(chord.bass).length + 1;
  // The slash of a numeral leads to another one, so `6/9` goes without its own.
  const suffix = chord.symbol
    .slice(formatName(chord.root).length, chord.symbol.length - slash)
    .replace('6/9', '69');
  if (suffix.startsWith('dim')) return { sign: '°', rest: suffix.slice(3) };
  if (suffix === 'm7♭5') return { sign: 'ø', rest: '7' };
  if (suffix.startsWith('aug')) return { sign: '+', rest: suffix.slice(3) };
  const rest = isMinorThird(chord) ? suffix.replace(/^m(?!aj)/, '') : suffix;
  // A bare 6 would be a figure of inversion.
  return { sign: '', rest: rest === '6' ? 'add6' : rest.replace(/^\((maj\d+)\)$/, '$1') };
}

function inversionOf(chord: Chord): string | null {
  const bass = chord.tones.find(({ name }) => sameName(name, chord.bass))?.degree.step;
  const found = Object.entries(FIGURES).find(
    ([, figure]) => figure.seventh === hasSeventh(chord) && figure.bass === bass,
  );
  return found?.[0] ?? null;
}

/** A chord that acts as a dominant: a major third and no major seventh, or a diminished chord. */
const pulls = (chord: Chord): boolean =>
  chord.family === 'dominant' ||
  chord.family === 'diminished' ||
  (chord.family === 'major' && !hasSeventh(chord) && hasDegree(chord, 3, 0));

/** A chord of the key that a dominant leads to. */
interface Target {
  readonly root: SpelledName;
  readonly numeral: string;
  readonly symbol: string;
}

/**
 * The chord of the key, other than home, that `chord` is the dominant of: a fifth below a major or dominant
 * chord, a half step above a diminished one.
 */
function targetOf(chord: Chord, key: Key, naming: Naming): Target | null {
  if (!pulls(chord)) return null;
  const fromRoot: Degree =
    chord.family === 'diminished' ? { step: 2, alteration: -1 } : { step: 4, alteration: 0 };
  const root = nameOfDegree(chord.root, fromRoot);
  const step = keyNames(key).findIndex((own) => sameName(own, root));
  const names = keyNames(key);
  const third = names[(step + 2) % 7];
  const fifth = names[(step + 4) % 7];
  if (step <= 0 || !third || !fifth) return null;
  // Nothing leads to a diminished chord.
  if (degreeOf(fifth, root).alteration !== 0) return null;
  // The dominant itself is major, whatever the minor signature says.
  const minor = degreeOf(third, root).alteration < 0 && !(key.mode === 'minor' && step === 4);
  const degree = degreeOf(root, key.tonic);
  return {
    root,
    numeral: romanOf(degree.step, minor),
    symbol: formatNameIn(naming, root) + (minor ? 'm' : ''),
  };
}

/** A dominant seventh on VII of a minor key belongs to it, but is heard as the way to its relative major. */
const leadsToRelative = (chord: Chord, key: Key): boolean =>
  key.mode === 'minor' && chord.family === 'dominant' && degreeOf(chord.root, key.tonic).step === 7;

/**
 * What a chord does in a key, with its numeral. `next`, where given, is the chord it goes to: a tonic or
 * subdominant seventh that does not lead on is the colour of blues and ska, not a secondary dominant. `naming` is
 * how the sentence names notes.
 */
export function chordFunction(
  chord: Chord,
  key: Key,
  next?: Chord,
  naming: Naming = 'letters',
): ChordFunction {
  const plain = plainNumeral(chord, key);
  const diatonic = isDiatonic(chord, key);
  if (diatonic && !leadsToRelative(chord, key)) {
    return { numeral: plain, kind: 'diatonic', sentence: diatonicSentence(chord, key, plain, naming) };
  }
  const target = targetOf(chord, key, naming);
  const leadsOn = next !== undefined && leadsTo(chord, next);
  const staysHome = sameName(chord.root, key.tonic) && next !== undefined && !leadsOn;
  const brightFour =
    key.mode === 'minor' && target?.numeral === 'VII' && chord.family === 'major' && !leadsOn;
  if (target && !staysHome && !brightFour) {
    const own = chord.family === 'diminished' ? 'vii' : 'V';
    const arrives = next !== undefined && sameName(next.root, target.root);
    const numeral = `${own}${quality(chord)}/${target.numeral}`;
    const sentence = `${formatChordIn(naming, chord)} (${numeral}) ${arrives ? 'leads' : 'would lead'} to ${target.symbol}, as a dominant of its own.`;
    return { numeral, kind: 'secondary dominant', sentence };
  }
  return { numeral: plain, ...outside(chord, key, plain, naming) };
}

/** All notes from the key or its raised sixth and seventh, on a root of the key. */
function usesRaisedSteps(chord: Chord, key: Key): boolean {
  const raised = ([6, 7] as const).map((step) => nameOfDegree(key.tonic, { step, alteration: 0 }));
  const own = [...keyNames(key), ...raised];
  return (
    keyNames(key).some((name) => sameName(name, chord.root)) &&
    chord.tones.every((tone) => own.some((name) => sameName(name, tone.name)))
  );
}

/** The keys on the same tonic that chords are borrowed from, the nearest first. */
const PARALLELS: Readonly<Record<Mode, readonly Mode[]>> = {
  major: ['minor'],
  minor: ['major'],
  dorian: ['minor', 'major'],
  phrygian: ['minor', 'major'],
  locrian: ['minor', 'major'],
  lydian: ['major', 'minor'],
  mixolydian: ['major', 'minor'],
};

function outside(
  chord: Chord,
  key: Key,
  numeral: string,
  naming: Naming,
): { readonly kind: 'borrowed' | 'outside'; readonly sentence: string } {
  const named = `${formatChordIn(naming, chord)} (${numeral})`;
  const parallel = PARALLELS[key.mode]
    .map((mode): Key => ({ tonic: key.tonic, mode }))
    .find((other) => isDiatonic(chord, other));
  if (parallel !== undefined) {
    return { kind: 'borrowed', sentence: `${named} is borrowed from ${describeKeyIn(naming, parallel)}.` };
  }
  const degree = degreeOf(chord.root, key.tonic);
  if (key.mode === 'minor' && usesRaisedSteps(chord, key)) {
    const sentence = `${named} takes the raised sixth or seventh of ${describeKeyIn(naming, key)}.`;
    return { kind: 'borrowed', sentence };
  }
  if (sameDegree(degree, { step: 2, alteration: -1 })) {
    const sentence =
      chord.family === 'dominant'
        ? `${named} takes the place of the dominant and slides down to ${formatNameIn(naming, key.tonic)}.`
        : `${named} lies a half step above home, and leads to the dominant or straight down.`;
    return { kind: chord.family === 'dominant' ? 'outside' : 'borrowed', sentence };
  }
  if (chord.family === 'dominant' && (degree.step === 1 || degree.step === 4) && degree.alteration === 0) {
    return { kind: 'outside', sentence: `${named} has a minor seventh for colour, as in blues and ska.` };
  }
  return { kind: 'outside', sentence: `${named} lies outside ${describeKeyIn(naming, key)}.` };
}

function diatonicSentence(chord: Chord, key: Key, numeral: string, naming: Naming): string {
  const named = `${formatChordIn(naming, chord)} (${numeral})`;
  const home = formatNameIn(naming, key.tonic) + (hasMinorThird(key.mode) ? 'm' : '');
  if (leadsHome(chord, key)) return `${named} is the dominant side: it wants to go home to ${home}.`;
  switch (degreeOf(chord.root, key.tonic).step) {
    case 1:
      return `${named} is home.`;
    case 4:
      return `${named} moves away from home.`;
    case 2:
      return `${named} prepares the dominant.`;
    default:
      return `${named} belongs to ${describeKeyIn(naming, key)}.`;
  }
}
