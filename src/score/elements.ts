import { digitsOf } from './digits';
import { textWidth } from './metrics/measure';
import type { Ink, InkRole, TextInk } from './types';

/** Ink that one element of a drawing shows. */
export interface Drawable {
  readonly ink: readonly [Ink, ...Ink[]];
  /** Whether it is a row of signs of which every one has its own place; else a path, or one text. */
  readonly isRow: boolean;
}

/** Short texts of digits and signs, whose letters the fonts set without kerning, so that each can be placed by itself. */
const ROWS: ReadonlySet<InkRole> = new Set(['fret', 'degree', 'finger', 'counting']);

/** A text that is searched for and copied, as a chord's name or a section's, stays a text of its own. */
const isSign = ({ font, text, role, runs }: TextInk): boolean =>
  !runs && (font === 'Bravura' ? text.length === 1 : ROWS.has(role) && !text.includes(' '));

const isAlike = (one: Ink, other: Ink): boolean =>
  one.kind === 'path'
    ? other.kind === 'path' && one.stroke === other.stroke
    : other.kind === 'text' &&
      one.size === other.size &&
      one.font === other.font &&
      one.bold === other.bold &&
      one.italic === other.italic;

/** An element a piece of ink. */
export const apart = (ink: readonly Ink[]): readonly Drawable[] =>
  ink.map((one) => ({ ink: [one], isRow: false }));

/** As few as show the ink: lines of one role and width together, signs of one role and look, and each text alone. */
export function together(ink: readonly Ink[]): readonly Drawable[] {
  const all: Drawable[] = [];
  const open = new Map<InkRole, { readonly ink: [Ink, ...Ink[]]; readonly isRow: boolean }[]>();
  for (const one of ink) {
    const isRow = one.kind === 'text' && isSign(one);
    if (one.kind === 'text' && !isRow) {
      all.push({ ink: [one], isRow });
      continue;
    }
    const ofRole = open.get(one.role) ?? [];
    const alike = ofRole.find(({ ink: [first] }) => isAlike(first, one));
    if (alike) {
      alike.ink.push(one);
      continue;
    }
    const drawable: (typeof ofRole)[number] = { ink: [one], isRow };
    all.push(drawable);
    ofRole.push(drawable);
    open.set(one.role, ofRole);
  }
  return all;
}

/** What those have in common of which one can become the other. */
export function kindOf({ ink: [first] }: Drawable): string {
  if (first.kind === 'path') return `${first.role} ${first.stroke}`;
  const { role, font, size, bold, italic } = first;
  return `${role} ${font} ${size} ${bold} ${italic}`;
}

/** The attributes that place an element: the data of a path; of a text its place, or that of each of its letters. */
export function placeOf({ ink, isRow }: Drawable): Readonly<Record<string, string>> {
  const [first] = ink;
  if (first.kind === 'path') return { d: ink.map((one) => (one.kind === 'path' ? one.d : '')).join('') };
  if (!isRow) return { x: digitsOf(first.x), y: digitsOf(first.y) };
  let [x, y] = ['', ''];
  for (const one of ink) {
    if (one.kind === 'path') continue;
    let left = one.x;
    for (const letter of one.text) {
      const blank = x === '' ? '' : ' ';
      x += blank + digitsOf(left);
      y += blank + digitsOf(one.y);
      if (one.text.length > 1) left += textWidth(letter, one.size, one.bold);
    }
  }
  return { x, y };
}

/** What an element says. */
export const wordsOf = ({ ink }: Drawable): string =>
  ink.map((one) => (one.kind === 'text' ? one.text : '')).join('');
