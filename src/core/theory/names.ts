import {
  type Alteration,
  failure,
  halfStepsAboveC,
  LETTERS,
  type Letter,
  type Result,
  type SpelledName,
  type SpelledPitch,
  success,
} from '../base';

const ALTERATIONS: readonly Alteration[] = [-2, -1, 0, 1, 2];
const SIGNS: Readonly<Record<Alteration, string>> = { [-2]: '♭♭', [-1]: '♭', 0: '', 1: '♯', 2: '♯♯' };

/** `value` as an alteration, or null when it lies beyond a double flat or sharp. */
export const alterationOrNull = (value: number): Alteration | null =>
  ALTERATIONS.find((alteration) => alteration === value) ?? null;

/** Real accidental signs: `♭♭`, `♭`, nothing, `♯`, `♯♯`. */
export const formatAlteration = (alteration: Alteration): string => SIGNS[alteration];

/** The name as drawn, with real ♭ and ♯: `B♭`. */
export const formatName = (name: SpelledName): string => name.letter + SIGNS[name.alteration];

/** The name and the octave it sounds in: `B♭1`; `E1` is the open E string of a bass. */
export const formatPitch = (pitch: SpelledPitch): string => formatName(pitch) + pitch.octave;

const isLetter = (text: string | undefined): text is Letter => LETTERS.some((letter) => letter === text);

const SIGN_VALUES: Readonly<Record<string, Alteration>> = {
  '': 0,
  b: -1,
  '♭': -1,
  bb: -2,
  '♭♭': -2,
  '𝄫': -2,
  '#': 1,
  '♯': 1,
  '##': 2,
  '♯♯': 2,
  x: 2,
  '𝄪': 2,
};

/** What a sign means, in any of its spellings, none among them; null for what is none. */
export const alterationOfSign = (sign: string): Alteration | null => SIGN_VALUES[sign] ?? null;

/** A note name at the beginning of a text; `length` counts UTF-16 units. */
interface LeadingName {
  readonly name: SpelledName;
  readonly length: number;
}

/** A letter, and a flat or sharp sign in any of its spellings; the double signs first. */
const LEADING = /^([A-G])((?:bb|♭♭|𝄫|##|♯♯|x|𝄪|b|♭|#|♯)?)/u;

/**
 * The note name a text begins with, or null. In `Ebb5` the second b belongs to the 5 (E♭ with a flat fifth),
 * because a fifth alone on a double flat is never meant.
 */
export function leadingName(text: string): LeadingName | null {
  const match = LEADING.exec(text);
  const letter = match?.[1];
  if (!match || !isLetter(letter)) return null;
  let sign = match[2] ?? '';
  if (/^(?:bb|♭♭|##|♯♯)$/.test(sign) && /^5(?!\d)/.test(text.slice(1 + sign.length))) sign = sign.slice(1);
  return { name: { letter, alteration: SIGN_VALUES[sign] ?? 0 }, length: 1 + sign.length };
}

/** Reads a note name such as `Bb`, `B♭`, `F#`; the problem is one sentence. */
export function parseName(text: string): Result<SpelledName, { readonly message: string }> {
  const trimmed = text.trim();
  const leading = leadingName(trimmed);
  return leading && leading.length === trimmed.length
    ? success(leading.name)
    : failure({ message: 'A note name is a capital letter from A to G, with ♭ or ♯ where needed.' });
}

/** Half steps of the natural note `step` staff steps above C0. */
function naturalHalfSteps(step: number): number {
  const octave = Math.floor(step / 7);
  return octave * 12 + halfStepsAboveC({ letter: letterOfStep(step), alteration: 0 });
}

/** The letter `step` staff steps above C; steps may be negative. */
const letterOfStep = (step: number): Letter => LETTERS[((step % 7) + 7) % 7] ?? 'C';

/**
 * The pitch `halfSteps` above C0, written on staff step `step` if a double alteration reaches it, else on the
 * nearest step where one does.
 */
export function spellOnStep(step: number, halfSteps: number): SpelledPitch {
  let written = step;
  for (;;) {
    const distance = halfSteps - naturalHalfSteps(written);
    const alteration = alterationOrNull(distance);
    if (alteration !== null) {
      return { letter: letterOfStep(written), alteration, octave: Math.floor(written / 7) };
    }
    written += distance > 0 ? 1 : -1;
  }
}

/** Half steps above C0; unlike a MIDI number it has no bounds. */
export const halfStepsOf = (pitch: SpelledPitch): number => pitch.octave * 12 + halfStepsAboveC(pitch);

/** The name within the octave from C0, to calculate with. */
export const inOctaveZero = (name: SpelledName): SpelledPitch => ({ ...nameOnly(name), octave: 0 });

/** A pitch or name without anything else. */
export const nameOnly = (name: SpelledName): SpelledName => ({
  letter: name.letter,
  alteration: name.alteration,
});

/** Staff steps of a letter above C: C 0 … B 6. */
export const stepOfName = ({ letter }: SpelledName): number => LETTERS.indexOf(letter);
