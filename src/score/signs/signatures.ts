/**
 * Clefs, key and time signatures: their ink is where the engraving library puts it (tests hold them against it), worked
 * out from the font's tables. A staff space is ten, the staff's top line is at 0.
 */
import { type Metre, remembered } from '../../core/base';
import { boxOf, fontMark, glyphMark, type Mark, MUSIC_SIZE, moveMark } from '../ink';
import { textWidth } from '../metrics/measure';

const HALF_SPACE = 5;

/** Clefs by SMuFL 1.4, with the y of the line that they name. */
const CLEFS = {
  bass: { code: 0xe062, y: 10 },
  treble: { code: 0xe050, y: 30 },
  percussion: { code: 0xe069, y: 20 },
} as const;

export type ClefKind = keyof typeof CLEFS;

const keptClefs = new Map<ClefKind, readonly Mark[]>();

/** A clef, its left edge at x = 0. */
export function clefInk(kind: ClefKind): readonly Mark[] {
  const { code, y } = CLEFS[kind];
  return remembered(keptClefs, kind, () => [glyphMark('clef', code, 0, y)]);
}

/** Signs of a key with the y of each in the treble clef, in the order in which they are added. */
const SHARPS = { code: 0xe262, ys: [0, 15, -5, 10, 25, 5, 20] } as const;
const FLATS = { code: 0xe260, ys: [20, 5, 25, 10, 30, 15, 35] } as const;
const NATURAL = 0xe261;
/** White from one sign to the next. */
const BETWEEN = 1;

/**
 * A key signature of `fifths` sharps or, below zero, flats (−7 to 7), its left edge at x = 0. A change to no
 * sharps or flats shows naturals for those `before`.
 */
export function keyInk(fifths: number, before: number, clef: ClefKind): readonly Mark[] {
  const shown = fifths === 0 ? before : fifths;
  const { code, ys } = shown > 0 ? SHARPS : FLATS;
  const sign = fifths === 0 ? NATURAL : code;
  const advance = textWidth(String.fromCodePoint(sign), MUSIC_SIZE) + BETWEEN;
  // The bass clef's lines are named a third lower.
  const down = clef === 'bass' ? 2 * HALF_SPACE : 0;
  return ys
    .slice(0, Math.abs(shown))
    .map((y, index) => glyphMark('key-signature', sign, index * advance, y + down));
}

const FIRST_FIGURE = 0xe080;
const FIGURES = { count: 10, unit: 30 } as const;

/** A time signature, its left edge at x = 0; the narrower of its numbers stands in the middle of the other. */
export function timeInk({ count, unit }: Metre): readonly Mark[] {
  const [upper, lower] = [figuresOf(count), figuresOf(unit)];
  const [above, below] = [textWidth(upper, MUSIC_SIZE), textWidth(lower, MUSIC_SIZE)];
  const width = Math.max(above, below);
  const number = (text: string, own: number, y: number): Mark =>
    fontMark('time-signature', text, (width - own) / 2, y, 'Bravura', MUSIC_SIZE, false, false);
  return [number(upper, above, FIGURES.count), number(lower, below, FIGURES.unit)];
}

const figuresOf = (value: number): string =>
  [...String(value)].map((digit) => String.fromCodePoint(FIRST_FIGURE + Number(digit))).join('');

/** The marks moved so that their left edge is at `x`; and where their right edge is then. */
export function setLeft(marks: readonly Mark[], x: number): { marks: readonly Mark[]; right: number } {
  const box = boxOf(marks);
  if (!box) return { marks, right: x };
  return {
    marks: marks.map((mark) => moveMark(mark, x - box.left, 0)),
    right: x + box.right - box.left,
  };
}
