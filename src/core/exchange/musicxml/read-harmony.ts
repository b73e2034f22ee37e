import type { Alteration, SpelledName } from '../../base';
import {
  type Chord,
  type Degree,
  formatName,
  type Interval,
  parseChord,
  sameDegree,
  transposeChord,
} from '../../theory';
import { KINDS, STEPS, type Step } from './kinds';
import { readStep } from './read-note';
import { childOf, childrenOf, numberOf, textOf, type XmlNode } from './xml-tree';

/** How a kind is written after its root; the changes follow it in brackets. */
const SUFFIXES: Readonly<Record<string, string>> = {
  major: '',
  minor: 'm',
  dominant: '7',
  'major-seventh': 'maj7',
  'minor-seventh': 'm7',
  'half-diminished': 'm7b5',
  diminished: 'dim',
  'diminished-seventh': 'dim7',
  augmented: 'aug',
  'augmented-seventh': 'aug7',
  'major-minor': 'm(maj7)',
  'major-sixth': '6',
  'minor-sixth': 'm6',
  'suspended-second': 'sus2',
  'suspended-fourth': 'sus4',
  power: '5',
  'dominant-ninth': '9',
  'major-ninth': 'maj9',
  'minor-ninth': 'm9',
  'dominant-11th': '11',
  'major-11th': 'maj11',
  'minor-11th': 'm11',
  'dominant-13th': '13',
  'major-13th': 'maj13',
  'minor-13th': 'm13',
};

/** A chord, the words for none (null), or what is to be said about one that cannot be written. */
export type ReadHarmony =
  | { readonly chord: Chord | null; readonly remark: string | null }
  | { readonly chord: undefined; readonly remark: string };

const ALTERATIONS: readonly Alteration[] = [-2, -1, 0, 1, 2];

function nameOf(node: XmlNode | undefined, part: 'root' | 'bass'): SpelledName | null {
  const read = readStep(childOf(node, part), `${part}-step`, `${part}-alter`);
  const alteration = ALTERATIONS.find((each) => each === read?.alter);
  return read === null || alteration === undefined ? null : { letter: read.letter, alteration };
}

interface Change {
  readonly type: string;
  readonly step: Step;
  /** As it is named: 9, 11, 13. */
  readonly value: number;
  readonly alter: number;
}

function changesOf(harmony: XmlNode): readonly Change[] {
  return childrenOf(harmony, 'degree').flatMap((node): Change[] => {
    const value = numberOf(node, 'degree-value') ?? 0;
    const step = STEPS[(value - 1) % 7];
    if (step === undefined || value < 1 || value > 15) return [];
    return [
      {
        type: textOf(node, 'degree-type') ?? 'add',
        step,
        value,
        alter: Math.round(numberOf(node, 'degree-alter') ?? 0),
      },
    ];
  });
}

/** By the standard, an added degree is altered against a dominant chord, a changed one against the kind's own. */
function changed(degrees: readonly Degree[], changes: readonly Change[]): readonly Degree[] {
  let result = [...degrees];
  for (const { type, step, alter } of changes) {
    const own = result.find((degree) => degree.step === step);
    if (type === 'add') {
      const alteration = ALTERATIONS.find((each) => each === (step === 7 ? alter - 1 : alter));
      if (alteration !== undefined) result.push({ step, alteration });
    } else {
      result = result.filter((degree) => degree !== own);
      const alteration = ALTERATIONS.find((each) => each === (own?.alteration ?? 0) + alter);
      if (type === 'alter' && alteration !== undefined) result.push({ step, alteration });
    }
  }
  return result;
}

const sameDegrees = (chord: Chord, degrees: readonly Degree[]): boolean =>
  chord.tones.length === new Set(degrees.map(({ step, alteration }) => `${step} ${alteration}`)).size &&
  chord.tones.every(({ degree }) => degrees.some((each) => sameDegree(each, degree)));

/** The trade leaves the third out of an eleventh chord over a dominant, and the eleventh out of a thirteenth chord. */
function asPlayed(kind: string, degrees: readonly Degree[]): readonly Degree[] {
  const leftOut = kind.endsWith('11th') ? 3 : kind.endsWith('13th') ? 4 : null;
  return degrees.filter(({ step }) => step !== leftOut);
}

const SIGNS: Readonly<Record<number, string>> = { [-2]: 'bb', [-1]: 'b', 0: '', 1: '#', 2: '##' };

/** The changes as they are written in a symbol: `(b9,add11,no3)`. */
function writtenChanges(changes: readonly Change[]): string {
  const texts = changes.map(({ type, value, alter }) => {
    if (type === 'subtract') return `no${value}`;
    const sign = SIGNS[alter] ?? '';
    return sign === '' || value === 7 ? `add${value}` : `${sign}${value}`;
  });
  return texts.length === 0 ? '' : `(${texts.join(',')})`;
}

/** The symbols that the harmony may mean, the likeliest first. */
function symbolsOf(kind: string, text: string, changes: readonly Change[]): readonly string[] {
  const suffix = SUFFIXES[kind];
  const said = text === '' ? [] : [text.replace(/\s+/g, '')];
  return suffix === undefined ? said : [...said, suffix + writtenChanges(changes), suffix];
}

/**
 * Reads a chord symbol: the one whose notes are those of kind and degrees, as it is written in the file if that is
 * one; else the nearest that can be written, with a sentence (without its full stop).
 */
export function readHarmony(harmony: XmlNode, interval: Interval): ReadHarmony {
  const kindNode = childOf(harmony, 'kind');
  const kind = kindNode?.text ?? '';
  const text = kindNode?.attributes.text ?? '';
  if (kind === 'none') return { chord: null, remark: null };
  const root = nameOf(harmony, 'root');
  if (root === null) {
    return { chord: undefined, remark: 'A chord without a root by name is written as N.C.' };
  }
  const bass = nameOf(harmony, 'bass');
  const slash = bass === null ? '' : `/${formatName(bass)}`;
  const changes = changesOf(harmony);
  const known = KINDS.find(({ name }) => name === kind);
  const degrees = known && changed(known.degrees, changes);
  const candidates = symbolsOf(kind, text, changes).flatMap((suffix) => {
    const chord = parseChord(formatName(root) + suffix + slash);
    return chord.ok ? [chord.value] : [];
  });
  const exact =
    degrees &&
    candidates.find((chord) => sameDegrees(chord, degrees) || sameDegrees(chord, asPlayed(kind, degrees)));
  const found = exact ?? (degrees === undefined ? candidates[0] : candidates.at(-1));
  const name = text === '' ? kind : text;
  if (found === undefined) {
    return {
      chord: undefined,
      remark: `The chord ${formatName(root)} “${name}” is not known here and written as N.C.`,
    };
  }
  const sounds = transposeChord(found, interval);
  const still = interval.steps % 7 === 0 && interval.halfSteps % 12 === 0;
  const chord = still ? found : sounds;
  // Of a kind without degrees, the text is all there is to go by.
  const remark =
    exact !== undefined || degrees === undefined
      ? null
      : `The chord ${formatName(root)} “${name}” is written as ${chord.symbol}, the nearest that is known here`;
  return { chord, remark };
}
