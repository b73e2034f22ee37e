import { listed, midiNumber, type SpelledPitch } from '../base';
import { romanNumeral } from '../fretboard';
import { DEGREE_STEPS, type DegreeStep } from '../line';
import { formatPitchIn, type Key, type Naming, spellMidi } from '../theory';
import type { AimTerms, SilentOnes } from './types';

/** Where an aim's words are read: pitches are spelled in the key and named as the lesson names notes. */
export interface AimReading {
  readonly key: Key;
  readonly naming: Naming;
}

const pitchOf = (midi: number, { key }: AimReading): SpelledPitch => spellMidi(midiNumber(midi), { key });

/** A sounding pitch as the lesson names it: `E1`. */
const pitchWords = (midi: number, reading: AimReading): string =>
  formatPitchIn(reading.naming, pitchOf(midi, reading));

export const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** `from E1 to G2`; null for a whole range. */
export function rangeWords({ lowest, highest }: AimTerms, reading: AimReading): string | null {
  if (lowest !== undefined && highest !== undefined) {
    return `from ${pitchWords(lowest, reading)} to ${pitchWords(highest, reading)}`;
  }
  if (lowest !== undefined) return `not below ${pitchWords(lowest, reading)}`;
  return highest === undefined ? null : `not above ${pitchWords(highest, reading)}`;
}

const DENSITY: Readonly<Record<NonNullable<AimTerms['density']>, string>> = {
  sparse: 'fewer notes than beats',
  busy: 'more notes than beats',
  any: 'any number of notes',
};

function silenceWords(silence: number | undefined): string | null {
  if (silence === undefined) return null;
  return silence === 0 ? 'any amount of silence' : `at least ${percent(silence)} of each bar silent`;
}

function positionWords(position: number | undefined): string | null {
  if (position === undefined) return null;
  return position === 0 ? 'the hand free' : `the hand in position ${romanNumeral(position)}`;
}

const ONES: Readonly<Record<SilentOnes, string>> = {
  never: 'no beat one silent',
  'some bars': 'beat one silent in some bars',
  most: 'beat one silent in most bars',
  'every second bar': 'beat one silent in every second bar',
};

const STEP_NAMES: Readonly<Record<DegreeStep, string>> = {
  1: 'root',
  2: 'second',
  3: 'third',
  4: 'fourth',
  5: 'fifth',
  6: 'sixth',
  7: 'seventh',
};

/** `root and fifth only`. */
const degreeWords = (degrees: readonly DegreeStep[] | undefined): string | null =>
  degrees === undefined
    ? null
    : degrees.length === DEGREE_STEPS.length
      ? 'any degree'
      : `${listed(degrees.map((step) => STEP_NAMES[step]))} only`;

/** What an aim asks, thing by thing, in words that read on in a sentence: `octave to be shown`, `not above G2`. */
export function aimWords(terms: AimTerms, reading: AimReading): readonly string[] {
  const { wanted = [], allowed = [], forbidden = [] } = terms;
  return [
    wanted.length === 0 ? null : `${listed(wanted)} to be shown`,
    allowed.length === 0 ? null : `${listed(allowed)} may be used`,
    forbidden.length === 0 ? null : `no ${forbidden.join(', no ')}`,
    terms.density === undefined ? null : DENSITY[terms.density],
    silenceWords(terms.silence),
    rangeWords(terms, reading),
    positionWords(terms.position),
    terms.silentOnes === undefined ? null : ONES[terms.silentOnes],
    degreeWords(terms.degrees),
  ].filter((words) => words !== null);
}
