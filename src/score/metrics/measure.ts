import type { InkBox, ScoreFont } from '../types';
import { GLYPHS, type GlyphBox, LIGATURES } from './glyph-table';
import { ACADEMICO_BOLD_WIDTHS, ACADEMICO_WIDTHS, type WidthRow } from './text-widths';

/**
 * Measuring without a browser: the numbers come from the fonts' own tables, so a layout is the same before the
 * fonts have arrived, in a test, and on every machine.
 */

/** A music font's size is four staff spaces (SMuFL 1.4, "Metrics and glyph registration"). */
const SPACES_PER_EM = 4;
/** Academico's capital height, by its font file. */
export const CAPITAL_HEIGHT = 0.722;
/** How far Academico's characters reach above and below the baseline, by their outlines; the first that fits. */
const ASCENTS: readonly (readonly [characters: RegExp, height: number])[] = [
  [/[À-ÝŠŽ]/, 0.96],
  [/♭/, 0.91],
  [/[♯♮()[\]]/, 0.81],
  [/./, 0.755],
];
const DESCENTS: readonly (readonly [characters: RegExp, depth: number])[] = [
  [/[/\\|]/, 0.25],
  [/[gjpqyçQJ()[\],;]/, 0.207],
  [/[♯♮]/, 0.105],
  [/./, 0.016],
];
/** A browser slants the upright letters where a font has no italic ones; the tops then lean over the end. */
const ITALIC_LEAN = 0.19;
/** A character of an unknown script is taken to be as wide as it can be expected to be. */
const UNKNOWN_WIDTH = 1000;

const glyphs = new Map(GLYPHS.map((glyph) => [glyph.code, glyph]));
const ligatures = new Map(LIGATURES.map((glyph) => [String.fromCodePoint(...glyph.codes), glyph]));
const widths = { normal: widthTable(ACADEMICO_WIDTHS), bold: widthTable(ACADEMICO_BOLD_WIDTHS) };

function widthTable(rows: readonly WidthRow[]): ReadonlyMap<string, number> {
  return new Map(rows.flatMap(([width, characters]) => [...characters].map((one) => [one, width])));
}

/** The table's row for a character of the music font; undefined for any other character. */
export const glyphOf = (character: string): GlyphBox | undefined => glyphs.get(character.codePointAt(0) ?? 0);

/** Width that a text takes on its line, at a font size. */
export function textWidth(text: string, size: number, bold = false): number {
  const table = bold ? widths.bold : widths.normal;
  let sum = 0;
  for (const character of text) {
    const glyph = glyphOf(character);
    sum += glyph ? (glyph.advance * 1000) / SPACES_PER_EM : (table.get(character) ?? UNKNOWN_WIDTH);
  }
  return (sum * size) / 1000;
}

export interface FaceOfText {
  readonly font: ScoreFont;
  readonly size: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
}

/** The rectangle that a text's ink covers when its baseline starts at `x`, `y`. */
export function textBox(text: string, x: number, y: number, face: FaceOfText): InkBox {
  const { font, size, bold = false, italic = false } = face;
  if (font === 'Bravura') return glyphRunBox(text, x, y, size);
  return {
    left: x,
    right: x + textWidth(text, size, bold) + (italic ? ITALIC_LEAN * size : 0),
    top: y - reach(ASCENTS, text) * size,
    bottom: y + reach(DESCENTS, text) * size,
  };
}

const reach = (table: readonly (readonly [RegExp, number])[], text: string): number =>
  table.find(([characters]) => characters.test(text))?.[1] ?? 0;

function glyphRunBox(text: string, x: number, y: number, size: number): InkBox {
  const unit = size / SPACES_PER_EM;
  let pen = x;
  let box: InkBox | null = null;
  const whole = ligatures.get(text);
  for (const glyph of whole ? [whole] : [...text].map(glyphOf)) {
    if (!glyph) continue;
    const one: InkBox = {
      left: pen + glyph.left * unit,
      right: pen + glyph.right * unit,
      top: y - glyph.top * unit,
      bottom: y - glyph.bottom * unit,
    };
    box = box ? unionBox(box, one) : one;
    pen += glyph.advance * unit;
  }
  return box ?? { left: x, right: x, top: y, bottom: y };
}

export const unionBox = (one: InkBox, other: InkBox): InkBox => ({
  left: Math.min(one.left, other.left),
  right: Math.max(one.right, other.right),
  top: Math.min(one.top, other.top),
  bottom: Math.max(one.bottom, other.bottom),
});
