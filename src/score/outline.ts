import { digitsOf } from './digits';
import { textWidth } from './metrics/measure';
import { OUTLINES, type OutlineRow } from './metrics/outlines';
import type { InkRole, TextInk } from './types';

/** Short texts of digits and signs, whose letters the font sets without kerning; a word stays a text, to be found and copied. */
const NUMBERS: ReadonlySet<InkRole> = new Set(['fret', 'degree', 'finger', 'counting']);

const tableOf = (rows: readonly OutlineRow[]): ReadonlyMap<string, string> => new Map(rows);
const tables = { Bravura: tableOf(OUTLINES.Bravura), Academico: tableOf(OUTLINES.Academico) };

/** Outlines by size and text: a sheet has hundreds of signs and a few dozen looks. A key put together would be dear. */
const known = { Bravura: new Map<number, Outlines>(), Academico: new Map<number, Outlines>() } as const;
const MOST_SIZES = 60;
const MOST_TEXTS = 200;

type Outlines = Map<string, string | null>;

function outlinesAt(size: number, ofSize: Map<number, Outlines>): Outlines {
  const there = ofSize.get(size);
  if (there !== undefined && there.size < MOST_TEXTS) return there;
  if (ofSize.size >= MOST_SIZES) ofSize.clear();
  const empty: Outlines = new Map();
  ofSize.set(size, empty);
  return empty;
}

/** A sign's or a number's look as SVG path data in the units of its size, from its origin; null for any other text. */
export function outlineOf(mark: TextInk): string | null {
  const { font, size, text, role, runs, bold, italic } = mark;
  if (runs || bold || italic || (font === 'Bravura' ? text.length > 1 : !NUMBERS.has(role))) return null;
  const outlines = outlinesAt(size, known[font]);
  const outline = outlines.get(text);
  if (outline !== undefined) return outline;
  const made = outlineOfText(mark);
  outlines.set(text, made);
  return made;
}

function outlineOfText({ font, size, text }: TextInk): string | null {
  const pen = new Pen(size / 1000);
  let left = 0;
  for (const letter of text) {
    const data = tables[font].get(letter);
    if (data === undefined) return null;
    pen.draw(data, left);
    left += textWidth(letter, size);
  }
  return pen.data;
}

/**
 * Writes outlines at a size: every point is rounded by itself, to a hundredth, and strokes lead from one rounded point to
 * the next, so that no rounding adds up along an outline.
 */
class Pen {
  data = '';
  private at = [0, 0];

  constructor(private readonly scale: number) {}

  /** @param left where the letter begins, in units of the drawing */
  draw(outline: string, left: number): void {
    let point = [left / this.scale, 0];
    let start = point;
    for (const [, command = '', digits = ''] of outline.matchAll(/([a-z])([^a-z]*)/g)) {
      this.data += command;
      if (command === 'z') {
        point = start;
        this.at = start.map((value) => this.rounded(value));
        continue;
      }
      const steps = digits.split(' ').map(Number);
      const points = steps.map((step, index) => (point[index % 2] ?? 0) + step);
      const moved = points.map((value, index) => this.rounded(value) - (this.at[index % 2] ?? 0));
      this.data += moved.map(digitsOf).join(' ').replaceAll(' -', '-');
      point = points.slice(-2);
      this.at = point.map((value) => this.rounded(value));
      if (command === 'm') start = point;
    }
  }

  private readonly rounded = (value: number): number => Math.round(value * this.scale * 100) / 100;
}
