import { type Letter, type SpelledName, type SpelledPitch, sameName } from '../base';
import { formatAlteration, formatName } from './names';
import type { Chord, Key } from './types';

/** How note names are written on the sheet: a choice of its own, apart from the language of the screen. */
export const NAMINGS = ['letters', 'german', 'fixed do'] as const;
export type Naming = (typeof NAMINGS)[number];

/** Do to Si on C to B, whatever the key (happynote.com, "Solfège"). */
const FIXED_DO: Readonly<Record<Letter, string>> = {
  C: 'Do',
  D: 'Re',
  E: 'Mi',
  F: 'Fa',
  G: 'Sol',
  A: 'La',
  B: 'Si',
};

/** H is the letters' B, B their B♭; -is raises, -es lowers, with Es, As and their doubles contracted (bernhardt-iner.de). */
function german(name: SpelledName): string {
  if (name.letter === 'B' && name.alteration === -1) return 'B';
  const letter = name.letter === 'B' ? 'H' : name.letter;
  if (name.alteration >= 0) return letter + 'is'.repeat(name.alteration);
  const contracted = letter === 'A' || letter === 'E';
  const once = contracted ? 's' : 'es';
  if (name.alteration === -1) return letter + once;
  return letter === 'A' ? 'Asas' : `${letter}${once}es`;
}

/** The name as this naming writes it: B♭ is `B♭`, `B` or `Si♭`. */
export function formatNameIn(naming: Naming, name: SpelledName): string {
  switch (naming) {
    case 'letters':
      return formatName(name);
    case 'german':
      return german(name);
    case 'fixed do':
      return FIXED_DO[name.letter] + formatAlteration(name.alteration);
  }
}

/** The name with the octave the pitch sounds in. */
export const formatPitchIn = (naming: Naming, pitch: SpelledPitch): string =>
  formatNameIn(naming, pitch) + pitch.octave;

/** The chord symbol with its root and bass named so: `Fism7`, `Fa♯m7`, `C/H`. */
export function formatChordIn(naming: Naming, chord: Chord): string {
  const slash = sameName(chord.root, chord.bass) ? '' : `/${formatName(chord.bass)}`;
  const suffix = chord.symbol.slice(formatName(chord.root).length, chord.symbol.length - slash.length);
  return (
    formatNameIn(naming, chord.root) + suffix + (slash === '' ? '' : `/${formatNameIn(naming, chord.bass)}`)
  );
}

/** `B major` for B♭ major in German names. */
export const describeKeyIn = (naming: Naming, key: Key): string =>
  `${formatNameIn(naming, key.tonic)} ${key.mode}`;
