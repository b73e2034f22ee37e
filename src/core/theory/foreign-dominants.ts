import { sameName } from '../base';
import { nameOfDegree, sameDegree } from './degrees';
import { keyNames } from './keys';
import { formatName } from './names';
import { FIGURES } from './numerals';
import type { Chord, Degree, Key } from './types';

export const hasDegree = (chord: Chord, step: Degree['step'], alteration: Degree['alteration']): boolean =>
  chord.tones.some(({ degree }) => sameDegree(degree, { step, alteration }));

export const isMinorThird = (chord: Chord): boolean => hasDegree(chord, 3, -1);
export const hasSeventh = (chord: Chord): boolean => chord.tones.some(({ degree }) => degree.step === 7);

/** What follows the numeral: quality, seventh, figures of inversion. */
export function quality(chord: Chord): string {
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

export const leadsTo = (chord: Chord, next: Chord): boolean =>
  sameName(next.root, nameOfDegree(chord.root, { step: 4, alteration: 0 }));

/**
 * Whether a dominant with a note from outside the key's signature goes where dominants lead, a fifth down: F7 to B♭ in
 * F major, A7 to Dm in D minor.
 */
export const isForeignDominantOf = (chord: Chord, next: Chord, key: Key): boolean =>
  chord.family === 'dominant' &&
  leadsTo(chord, next) &&
  chord.tones.some(({ name }) => !keyNames(key).some((own) => sameName(own, name)));
