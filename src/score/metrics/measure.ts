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

/** What a text measures at size 1000 in the text face, bold and not; and how far it reaches over and under its line. */
interface Measures {
  readonly normal: number;
  readonly bold: number;
  readonly ascent: number;
  readonly descent: number;
}

/** The same few texts, as fret numbers and degrees, are measured for every note. */
const measured = new Map<string, Measures>();
const MOST_MEASURED = 5000;

function measuresOf(text: string): Measures {
  const known = measured.get(text);
  if (known) return known;
  if (measured.size >= MOST_MEASURED) measured.clear();
  const measures = {
    normal: sumOf(text, widths.normal),
    bold: sumOf(text, widths.bold),
    ascent: reach(ASCENTS, text),
    descent: reach(DESCENTS, text),
  };
  measured.set(text, measures);
  return measures;
}

function sumOf(text: string, table: ReadonlyMap<string, number>): number {
  let sum = 0;
  for (const character of text) {
    const glyph = glyphOf(character);
    sum += glyph ? (glyph.advance * 1000) / SPACES_PER_EM : (table.get(character) ?? UNKNOWN_WIDTH);
  }
  return sum;
}

/** Width that a text takes on its line, at a font size. */
export function textWidth(text: string, size: number, bold = false): number {
  const { [bold ? 'bold' : 'normal']: sum } = measuresOf(text);
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
    top: y - measuresOf(text).ascent * size,
    bottom: y + measuresOf(text).descent * size,
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

const unionBox = (one: InkBox, other: InkBox): InkBox => ({
  left: Math.min(one.left, other.left),
  right: Math.max(one.right, other.right),
  top: Math.min(one.top, other.top),
  bottom: Math.max(one.bottom, other.bottom),
});
