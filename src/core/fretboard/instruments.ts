import {
  type Alteration,
  fret,
  LETTERS,
  type MidiNumber,
  midiNumber,
  midiOf,
  type SpelledPitch,
} from '../base';
import { formatNameIn, type Naming } from '../theory';
import type { Instrument } from './types';

export interface Tuning {
  readonly id: string;
  /** The trade's name for it, which may call a string by its note. */
  readonly name: (naming: Naming) => string;
  /** The highest string (string 1) first. */
  readonly openStrings: readonly SpelledPitch[];
}

/** Scale lengths in millimetres: 34 inches (long) and 30 inches (short). */
export const LONG_SCALE = 864;
export const SHORT_SCALE = 762;

const NOTE = /^([A-G])(♭|♯|)(\d)$/u;

function pitch(text: string): SpelledPitch {
  const [, letterText, accidental, octave] = NOTE.exec(text) ?? [];
  const letter = LETTERS.find((candidate) => candidate === letterText);
  if (letter === undefined) throw new RangeError(`Not a pitch: ${text}`);
  const alteration: Alteration = accidental === '♭' ? -1 : accidental === '♯' ? 1 : 0;
  return { letter, alteration, octave: Number(octave) };
}

/**
 * @param name in which `{low}` and `{high}` stand for the outer strings
 * @param pitches the lowest string first, as tunings are spoken
 */
function tuning(id: string, name: string, pitches: string): Tuning {
  const openStrings = pitches.split(' ').map(pitch).reverse();
  const named = (naming: Naming, string: SpelledPitch | undefined) =>
    string === undefined ? '' : formatNameIn(naming, string);
  return {
    id,
    name: (naming) =>
      name
        .replace('{low}', named(naming, openStrings.at(-1)))
        .replace('{high}', named(naming, openStrings[0])),
    openStrings,
  };
}

export const STANDARD_TUNING = tuning('standard', 'Standard, four strings', 'E1 A1 D2 G2');

/** Sounding pitches. Standard, low B and six-string tunings by ISO 16 pitch; the others are common practice. */
export const TUNINGS: readonly Tuning[] = [
  STANDARD_TUNING,
  tuning('drop-d', 'Drop {low}', 'D1 A1 D2 G2'),
  tuning('whole-step-down', 'A whole step down', 'D1 G1 C2 F2'),
  tuning('half-step-down', 'Half a step down', 'E♭1 A♭1 D♭2 G♭2'),
  tuning('five-strings', 'Five strings, low {low}', 'B0 E1 A1 D2 G2'),
  tuning('five-strings-high', 'Five strings, high {high}', 'E1 A1 D2 G2 C3'),
  tuning('six-strings', 'Six strings, low {low} to high {high}', 'B0 E1 A1 D2 G2 C3'),
];

/**
 * @param openStrings the highest string first
 * @param frets 20 unless said otherwise
 * @param scaleLength millimetres from nut to bridge; a long scale unless said otherwise
 * @throws RangeError when there is no string, or the scale length is not above 0
 */
export function createInstrument(
  openStrings: readonly SpelledPitch[] = STANDARD_TUNING.openStrings,
  frets = 20,
  scaleLength = LONG_SCALE,
): Instrument {
  if (openStrings.length === 0) throw new RangeError('An instrument needs a string');
  if (!(scaleLength > 0)) throw new RangeError(`A scale length must be above 0 mm, not ${scaleLength}`);
  return { openStrings, frets: fret(frets), scaleLength };
}

/** The lowest and the highest pitch on the neck, or up to `highestFret` where that is lower. */
export function rangeOf(
  instrument: Instrument,
  highestFret: number = instrument.frets,
): { readonly lowest: MidiNumber; readonly highest: MidiNumber } {
  const open = instrument.openStrings.map(midiOf).sort((one, other) => one - other);
  const lowest = open[0];
  const top = open.at(-1);
  if (lowest === undefined || top === undefined) throw new RangeError('An instrument needs a string');
  return { lowest, highest: midiNumber(top + Math.min(highestFret, instrument.frets)) };
}
