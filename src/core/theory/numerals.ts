import { type Alteration, failure, type Result, success } from '../base';
import { parseChord } from './chords';
import { intervalOfDegree } from './degrees';
import { transposeName } from './intervals';
import { keyNames } from './keys';
import { formatName } from './names';
import type { Chord, Degree, Key } from './types';

const STEPS: readonly Degree['step'][] = [1, 2, 3, 4, 5, 6, 7];
const ROMAN: readonly string[] = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII'];

/** `V`, or `v` for a minor chord. */
export const romanOf = (step: Degree['step'], minor: boolean): string => {
  const roman = ROMAN[step - 1] ?? 'I';
  return minor ? roman.toLowerCase() : roman;
};

const SIGNS: Readonly<Record<string, Alteration>> = { b: -1, '♭': -1, '#': 1, '♯': 1 };
const NUMERAL = /^([b♭#♯]?)(VII|VI|V|IV|III|II|I|vii|vi|v|iv|iii|ii|i)([^/]*)(?:\/(.+))?$/;
const NUMBER = /^([b♭#♯]?)([1-7])([^/]*)(?:\/([b♭#♯]?)([1-7]))?$/;

/** Figures of a chord's position: which of its thirds lies in the bass (Open Music Theory, "Inversions"). */
export const FIGURES: Readonly<Record<string, { readonly seventh: boolean; readonly bass: 3 | 5 | 7 }>> = {
  '6': { seventh: false, bass: 3 },
  '64': { seventh: false, bass: 5 },
  '65': { seventh: true, bass: 3 },
  '43': { seventh: true, bass: 5 },
  '42': { seventh: true, bass: 7 },
};

/** Whether a text is meant as a numeral (`vi`, `♭VII`, `V7/ii`) or a number (`6-`, `5/7`) rather than a chord symbol. */
export const looksLikeNumeral = (text: string): boolean => NUMERAL.test(text) || NUMBER.test(text);

/**
 * Reads a Roman numeral or the number of a number chart in a key, and gives the chord it stands for.
 *
 * Capitals are major, small letters minor; `°`, `o`, `ø`, `+`, `7`, `maj7` and figures of inversion (`6`, `64`,
 * `65`, `43`, `42`) follow. Without an accidental a numeral stands on the key's own step (VI in A minor is F,
 * and a diminished vii takes the raised seventh); with one it counts from the major scale on the tonic. In a
 * number chart a plain number is major and `-` or `m` makes it minor (common practice, no source).
 */
export function parseNumeral(text: string, key: Key): Result<Chord, { readonly message: string }> {
  const symbol = symbolOfNumeral(text.trim(), key) ?? symbolOfNumber(text.trim(), key);
  const chord = symbol === null ? null : parseChord(symbol);
  return chord?.ok
    ? success(chord.value)
    : failure({
        message: `“${text.trim().slice(0, 20)}” is not a chord of a key. Write for example ii7, ♭VII or 5/7.`,
      });
}

function rootOf(sign: string, step: Degree['step'], raised: boolean, key: Key) {
  const alteration = SIGNS[sign];
  if (alteration !== undefined) return transposeName(key.tonic, intervalOfDegree({ step, alteration }));
  if (raised) return transposeName(key.tonic, intervalOfDegree({ step, alteration: 0 }));
  return keyNames(key)[step - 1] ?? key.tonic;
}

function symbolOfNumeral(text: string, key: Key): string | null {
  const match = NUMERAL.exec(text);
  if (!match) return null;
  const [, sign = '', roman = '', rest = '', of] = match;
  if (of !== undefined) {
    const target = symbolOfNumeral(of, key);
    const chord = target === null || of.includes('/') ? null : parseChord(target);
    if (!chord?.ok) return null;
    // The chord it leads to is a home of its own for a moment.
    const mode = chord.value.family === 'minor' ? 'minor' : 'major';
    return symbolOfNumeral(sign + roman + rest, { tonic: chord.value.root, mode });
  }
  const step = STEPS[ROMAN.indexOf(roman.toUpperCase())];
  if (step === undefined) return null;
  const minor = roman !== roman.toUpperCase();
  const diminished = /^[°oø]/.test(rest);
  const root = rootOf(sign, step, diminished && step === 7, key);
  const { quality, inversion } = splitFigures(rest);
  const descriptor = describe(quality, minor);
  const figure = FIGURES[inversion];
  if (!figure) return formatName(root) + descriptor;
  const full = figure.seventh ? withSeventh(descriptor) : descriptor;
  const chord = parseChord(formatName(root) + full);
  const bass = chord.ok ? chord.value.tones.find((tone) => tone.degree.step === figure.bass) : undefined;
  return bass ? `${formatName(root)}${full}/${formatName(bass.name)}` : null;
}

function splitFigures(rest: string): { readonly quality: string; readonly inversion: string } {
  const match = /^([°oø+]?)(6|64|65|43|42)$/.exec(rest);
  return match ? { quality: match[1] ?? '', inversion: match[2] ?? '' } : { quality: rest, inversion: '' };
}

/** The descriptor of a chord symbol for what follows a numeral. */
function describe(quality: string, minor: boolean): string {
  if (/^[°o]/.test(quality)) return `dim${quality.slice(1)}`;
  if (quality.startsWith('ø')) return 'm7b5';
  if (quality.startsWith('+')) return `aug${quality.slice(1)}`;
  return (minor ? 'm' : '') + (minor && /^maj/.test(quality) ? `(${quality})` : quality);
}

const withSeventh = (descriptor: string): string => (descriptor === 'm7b5' ? descriptor : `${descriptor}7`);

function symbolOfNumber(text: string, key: Key): string | null {
  const match = NUMBER.exec(text);
  if (!match) return null;
  const [, sign = '', number, rest = '', bassSign = '', bassNumber] = match;
  const stepOf = (digit: string | undefined) => STEPS.find((step) => String(step) === digit);
  const step = stepOf(number);
  if (step === undefined) return null;
  const bass = stepOf(bassNumber);
  const slash = bass === undefined ? '' : `/${formatName(rootOf(bassSign, bass, false, key))}`;
  return formatName(rootOf(sign, step, false, key)) + rest + slash;
}
