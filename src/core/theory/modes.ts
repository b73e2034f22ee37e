import { MODES, type Mode } from './types';

/**
 * Fifths from the signature of a mode on a tonic to that of major on it: D dorian has the signature of C major, two
 * fifths flatter than D major (Open Music Theory, "Diatonic modes").
 */
export const FIFTHS_FROM_MAJOR: Readonly<Record<Mode, number>> = {
  lydian: 1,
  major: 0,
  mixolydian: -1,
  dorian: -2,
  minor: -3,
  phrygian: -4,
  locrian: -5,
};

/** Whether the third above the tonic is minor. */
export const hasMinorThird = (mode: Mode): boolean => FIFTHS_FROM_MAJOR[mode] < -1;

/** Other words for modes, and how their names are shortened (common practice, no source). */
const SPOKEN: ReadonlyMap<string, Mode> = new Map<string, Mode>([
  ...MODES.map((mode): [string, Mode] => [mode, mode]),
  ['min', 'minor'],
  ['-', 'minor'],
  ['aeolian', 'minor'],
  ['maj', 'major'],
  ['ionian', 'major'],
  ['dor', 'dorian'],
  ['phr', 'phrygian'],
  ['lyd', 'lydian'],
  ['mixo', 'mixolydian'],
  ['mix', 'mixolydian'],
  ['loc', 'locrian'],
]);

/** The mode that stands after a tonic: `m` is minor, `M` and nothing are major; null for a word that is none. */
export function parseMode(text: string): Mode | null {
  if (text === '' || text === 'M') return 'major';
  return text === 'm' ? 'minor' : (SPOKEN.get(text.toLowerCase()) ?? null);
}
