import { digitsOf } from './digits';
import type { Ink, InkRole } from './types';

/** Ink that one element of a drawing shows. */
export interface Drawable {
  readonly ink: readonly [Ink, ...Ink[]];
  /** Whether it is one text; else the lines or the outlines of all its ink are one path. */
  readonly isText: boolean;
}

const isAlike = (one: Ink, other: Ink): boolean =>
  one.kind === 'path'
    ? other.kind === 'path' && one.stroke === other.stroke
    : other.kind === 'text' && one.size === other.size && one.font === other.font;

/** An element a piece of ink. */
export const apart = (ink: readonly Ink[]): readonly Drawable[] =>
  ink.map((one) => ({ ink: [one], isText: one.kind === 'text' }));

/** As few as show the ink: lines of one role and width together, signs of one role and look, and each text alone. */
export function together(ink: readonly Ink[]): readonly Drawable[] {
  const all: Drawable[] = [];
  const open = new Map<InkRole, { readonly ink: [Ink, ...Ink[]]; readonly isText: false }[]>();
  for (const one of ink) {
    // A text that is searched for and copied, as a chord's name or a section's, stays a text of its own.
    if (one.kind === 'text' && one.outline === undefined) {
      all.push({ ink: [one], isText: true });
      continue;
    }
    const ofRole = open.get(one.role) ?? [];
    const alike = ofRole.find(({ ink: [first] }) => isAlike(first, one));
    if (alike) {
      alike.ink.push(one);
      continue;
    }
    const drawable: (typeof ofRole)[number] = { ink: [one], isText: false };
    all.push(drawable);
    ofRole.push(drawable);
    open.set(one.role, ofRole);
  }
  return all;
}

/** What those have in common of which one can become the other. */
export function kindOf({ ink: [first], isText }: Drawable): string {
  if (first.kind === 'path') return `${first.role} ${first.stroke}`;
  const { role, font, size, bold, italic } = first;
  return isText ? `${role} ${font} ${size} ${bold} ${italic}` : `${role} 0`;
}

/** The attributes that place an element: the data of a path, or the place of a text. */
export function placeOf({ ink, isText }: Drawable): Readonly<Record<string, string>> {
  const [first] = ink;
  if (isText && first.kind === 'text') return { x: digitsOf(first.x), y: digitsOf(first.y) };
  let d = '';
  for (const one of ink)
    d += one.kind === 'path' ? one.d : `M${digitsOf(one.x)} ${digitsOf(one.y)}${one.outline ?? ''}`;
  return { d };
}

/** What the text of an element says. */
export const wordsOf = ({ ink: [first] }: Drawable): string => (first.kind === 'text' ? first.text : '');
