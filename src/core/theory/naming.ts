import {
  type Alteration,
  failure,
  LETTERS,
  type Letter,
  type Result,
  type SpelledName,
  type SpelledPitch,
  sameName,
  success,
} from '../base';
import { alterationOfSign, formatAlteration, formatName, parseName } from './names';
import type { Chord, Key, Scale } from './types';

/**
 * How note names are written wherever a person reads or types one: a choice of its own, apart from the language of
 * the screen. What a lesson stores is in letters whatever is chosen: its `B` must not become another chord with the
 * setting.
 */
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

/** A chord symbol in the three parts that are set apart when it is drawn. */
export interface DrawnSymbol {
  /** Root and triad: `F♯m`, `C`, `B°`. */
  readonly base: string;
  /** What is added to the triad, set raised: `7♭5`, `maj7`, `(♯5,♯9)`; '' for a triad. */
  readonly raised: string;
  /** `/A`; '' where the root is in the bass. */
  readonly bass: string;
}

/** The signs of a triad's quality; what follows them is added to it (`maj7` is, though it begins with an m). */
const QUALITY = /^(?:m(?!aj)|°|ø|\+|−|dim|aug)?/u;

/** The chord symbol with its root and bass named so, taken apart: `Fism` `7` for F♯m7 in German names. */
export function chordPartsIn(naming: Naming, chord: Chord): DrawnSymbol {
  const slash = sameName(chord.root, chord.bass) ? '' : `/${formatName(chord.bass)}`;
  const suffix = chord.symbol.slice(formatName(chord.root).length, chord.symbol.length - slash.length);
  const quality = QUALITY.exec(suffix)?.[0] ?? '';
  return {
    base: formatNameIn(naming, chord.root) + quality,
    raised: suffix.slice(quality.length),
    bass: slash === '' ? '' : `/${formatNameIn(naming, chord.bass)}`,
  };
}

/** The chord symbol with its root and bass named so: `Fism7`, `Fa♯m7`, `C/H`. */
export function formatChordIn(naming: Naming, chord: Chord): string {
  const { base, raised, bass } = chordPartsIn(naming, chord);
  return base + raised + bass;
}

/** `B major` for B♭ major in German names. */
export const describeKeyIn = (naming: Naming, key: Key): string =>
  `${formatNameIn(naming, key.tonic)} ${key.mode}`;

/** `B mixolydian` for B♭ mixolydian in German names; the root is the scale's first note. */
export const describeScaleIn = (naming: Naming, { kind, names: [root] }: Scale): string =>
  root === undefined ? kind : `${formatNameIn(naming, root)} ${kind}`;

const ALTERATIONS: readonly Alteration[] = [0, -1, 1, -2, 2];

/** Every German name with what it means; for B♭ and A♭♭ the regular forms, too. */
const GERMAN: ReadonlyMap<string, SpelledName> = new Map([
  ...LETTERS.flatMap((letter) =>
    ALTERATIONS.map((alteration): [string, SpelledName] => {
      const name = { letter, alteration };
      return [german(name), name];
    }),
  ),
  ['Hes', { letter: 'B', alteration: -1 }],
  ['Ases', { letter: 'A', alteration: -2 }],
]);

/** German names, and letters with signs; `B` with one can only mean the letters' B♭. */
function parseGerman(text: string): SpelledName | null {
  const known = GERMAN.get(text);
  if (known !== undefined) return known;
  const signed = parseName(text.replace(/^H/, 'B'));
  return signed.ok && (!text.startsWith('B') || signed.value.alteration === -1) ? signed.value : null;
}

/** In capitals or not, with or without the accent of Ré. */
function parseFixedDo(text: string): SpelledName | null {
  const lowered = text.toLowerCase().replace('é', 'e');
  const letter = LETTERS.find((each) => lowered.startsWith(FIXED_DO[each].toLowerCase()));
  const alteration = letter && alterationOfSign(lowered.slice(FIXED_DO[letter].length));
  return letter === undefined || alteration == null ? null : { letter, alteration };
}

/**
 * Reads a note name as this naming writes it: a German `B` is B♭, `Fis` is F♯, `Si♭` or `Sib` is B♭. The problem is
 * one sentence.
 */
export function parseNameIn(naming: Naming, text: string): Result<SpelledName, { readonly message: string }> {
  if (naming === 'letters') return parseName(text);
  const trimmed = text.trim();
  const read = naming === 'german' ? parseGerman(trimmed) : parseFixedDo(trimmed);
  if (read !== null) return success(read);
  return failure({
    message:
      naming === 'german'
        ? 'A German note name is a capital letter from A to H, with -is or -es where needed; B is a half step below H.'
        : 'A note name is Do, Re, Mi, Fa, Sol, La or Si, with ♭ or ♯ where needed.',
  });
}
