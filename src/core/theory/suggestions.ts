import { parseChord } from './chords';
import { parseKey } from './keys';
import { formatName } from './names';
import { type Naming, parseNameIn } from './naming';
import type { Key } from './types';

/** Endings that people mean most often, the most frequent first; a tie in distance goes to the earlier one. */
const COMMON: readonly string[] = [
  '',
  'm',
  '7',
  'm7',
  'maj7',
  'sus4',
  '7sus4',
  'sus2',
  'add9',
  '6',
  'm6',
  '9',
  'm9',
  'maj9',
  'm7b5',
  'dim',
  'dim7',
  'aug',
  '7b9',
  '7#9',
  '11',
  'm11',
  '13',
  '7#11',
  '7b5',
  '7#5',
  '69',
  'm(maj7)',
  'madd9',
  '5',
  '7alt',
];
const LONGEST = 16;

/** Steps of a letter changed, added, dropped, or two neighbours exchanged (optimal string alignment). */
function distance(one: string, other: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      const exchanged =
        one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1]
          ? (beforeLast[column - 2] ?? Number.POSITIVE_INFINITY) + 1
          : Number.POSITIVE_INFINITY;
      current.push(
        Math.min(
          (last[column] ?? 0) + 1,
          (current[column - 1] ?? 0) + 1,
          (last[column - 1] ?? 0) + (same ? 0 : 1),
          exchanged,
        ),
      );
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length] ?? 0;
}

/** A root or bass in German names (`Fis`, `Es`, `H`) or fixed do (`Sol`, `Sib`), which letters cannot be. */
const OTHER_NAMES: readonly (readonly [naming: Naming, name: RegExp])[] = [
  ['german', /^(?:[A-H](?:isis|eses|is|es)|Asas|[AE]s|H)/],
  ['fixed do', /^(?:Do|R[eé]|Mi|Fa|Sol|La|Si)(?:♭|♯|b|#)?/],
];

/** The text with its leading name in letters; itself where it begins with no other name. */
function renamed(text: string, naming: Naming, pattern: RegExp): string {
  const [found = ''] = pattern.exec(text) ?? [];
  const name = parseNameIn(naming, found);
  return name.ok ? formatName(name.value) + text.slice(found.length) : text;
}

/** The chord in letters where a symbol is one with its root or bass in other names; null where it is not. */
function inLetters(text: string): string | null {
  for (const [naming, pattern] of OTHER_NAMES) {
    const parts = text.split('/').map((part) => renamed(part, naming, pattern));
    const chord = parseChord(parts.join('/'));
    if (chord.ok) return chord.value.symbol;
  }
  return null;
}

/** The key in letters where a text is one in other names: `H` gives B major, `Fism` F♯ minor; null where it is not. */
export function suggestKey(text: string): Key | null {
  for (const [naming, pattern] of OTHER_NAMES) {
    const key = parseKey(renamed(text.trim(), naming, pattern));
    if (key.ok) return key.value;
  }
  return null;
}

/**
 * The chord symbol most likely meant by a text that is none, drawn as it would stand on the sheet; null where
 * even the root is a guess. `am` gives Am, `Cmja7` Cmaj7, `H7` B7, `Fism` F♯m, `Sol7` G7.
 */
export function suggestChord(text: string): string | null {
  // Wide letters, as they are typed in an East Asian keyboard, are the same letters.
  const trimmed = text.normalize('NFKC').trim();
  if (trimmed.length > LONGEST) return null;
  const named = inLetters(trimmed);
  if (named !== null) return named;
  const match = /^([a-hA-H])([b♭#♯]?)(.*)$/u.exec(trimmed);
  if (!match) return null;
  const letter = (match[1] ?? '').toUpperCase();
  const root = (letter === 'H' ? 'B' : letter) + (match[2] ?? '');
  const rest = match[3] ?? '';
  const opens = rest.lastIndexOf('(') > rest.lastIndexOf(')');
  const asTyped = parseChord(root + rest + (opens ? ')' : ''));
  if (asTyped.ok) return asTyped.value.symbol;
  const lowered = rest.toLowerCase().replace(/[()\s.,]/g, '');
  let best: string | null = null;
  let least = Math.max(2, Math.ceil(lowered.length / 2)) + 1;
  for (const ending of COMMON) {
    const away = distance(lowered, ending);
    if (away < least) {
      least = away;
      best = ending;
    }
  }
  const guess = best === null ? null : parseChord(root + best);
  return guess?.ok ? guess.value.symbol : null;
}
