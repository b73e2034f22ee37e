import { type Mark, moved, type Tag, type TextMeasure, type TextStyle, tagged } from './marks';

/** A strip of the page that is never cut. Its marks count from its own top left corner. */
export interface Row {
  readonly height: number;
  /** White space above it, unless it is the first of its page. */
  readonly gap: number;
  /** The row must not be the last of its page (a heading, the first line of a paragraph). */
  readonly keepWithNext: boolean;
  readonly marks: readonly Mark[];
  /** What stands over the row again where it begins a page: the heading of the part that goes on. */
  readonly heading?: Row;
}

/** Distance from one baseline to the next, as a multiple of the font size. */
const LEADING = 1.3;
/** Height of a line above its baseline, as a multiple of the font size. */
const ASCENT = 0.95;

/** A line of text as a row. */
export function textRow(
  text: string,
  style: TextStyle,
  options: { readonly gap?: number; readonly x?: number; readonly keepWithNext?: boolean } = {},
): Row {
  return {
    height: style.size * LEADING,
    gap: options.gap ?? 0,
    keepWithNext: options.keepWithNext ?? false,
    marks: [
      {
        kind: 'text',
        text,
        ...style,
        x: options.x ?? 0,
        y: style.size * ASCENT,
        anchor: 'start',
      },
    ],
  };
}

/** A row that is one thing for someone who has the file read aloud. */
export const taggedRow = (row: Row, tag: Tag): Row => ({ ...row, marks: tagged(row.marks, tag) });

/** Headings of the second order become such of the third, for what stands under another heading. */
export const underHeading = (rows: readonly Row[]): readonly Row[] =>
  rows.map((row) => ({
    ...row,
    marks: row.marks.map((mark) => (mark.tag?.role === 'H2' ? { ...mark, tag: { role: 'H3' } } : mark)),
  }));

/** A heading of the second order. */
export const headingRow = (text: string, style: TextStyle, gap: number): Row =>
  taggedRow(textRow(text, style, { gap, keepWithNext: true }), { role: 'H2' });

/** A part of the sheet: its heading, and its rows, over which the heading stands again where a page begins with one. */
export function headedRows(
  text: string,
  style: TextStyle,
  gap: number,
  rows: readonly Row[],
): readonly Row[] {
  if (rows.length === 0) return [];
  const again = taggedRow(textRow(`${text}, continued`, style), { role: 'Artifact' });
  return [headingRow(text, style, gap), ...rows.map((row) => ({ ...row, heading: row.heading ?? again }))];
}

/**
 * A paragraph broken into lines of at most `width`. Its first two lines stay together, and so do its last two.
 * A word that is wider than the line is broken between characters.
 */
export function paragraphRows(
  text: string,
  style: TextStyle,
  width: number,
  measure: TextMeasure,
  options: { readonly gap?: number; readonly x?: number; readonly role?: Tag['role'] } = {},
): readonly Row[] {
  const tag: Tag = { role: options.role ?? 'P' };
  const lines = wrap(text, width, (part) => measure(part, style));
  return lines.map((line, index) =>
    taggedRow(
      textRow(line, style, {
        x: options.x ?? 0,
        gap: index === 0 ? (options.gap ?? 0) : 0,
        keepWithNext: index < lines.length - 1 && (index === 0 || index === lines.length - 2),
      }),
      tag,
    ),
  );
}

/** Holds two words in one line; set as a plain space. */
const NO_BREAK = '\u00a0';

/** A text that is never broken. */
export const joined = (text: string): string => text.replaceAll(' ', NO_BREAK);

/**
 * Breaks a text into lines no wider than `width`, at spaces where it can, but not at a no-break space.
 * @param indent - what the first line has less
 */
export function wrap(
  text: string,
  width: number,
  measure: (text: string) => number,
  indent = 0,
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const part of text.split(/[^\S\u00a0]+/).filter((each) => each !== '')) {
    const word = part.replaceAll(NO_BREAK, ' ');
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) + (lines.length === 0 ? indent : 0) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = breakWord(word, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  if (line !== '') lines.push(line);
  return lines;
}

function breakWord(word: string, width: number, measure: (text: string) => number): readonly string[] {
  if (measure(word) <= width) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && measure(piece + character) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}

/** Rows that are never parted, made into one. */
export function joinRows(rows: readonly Row[]): Row {
  let height = 0;
  const marks: Mark[] = [];
  rows.forEach((row, index) => {
    if (index > 0) height += row.gap;
    const top = height;
    marks.push(...row.marks.map((mark) => moved(mark, 0, top)));
    height += row.height;
  });
  return {
    height,
    gap: rows[0]?.gap ?? 0,
    keepWithNext: rows.at(-1)?.keepWithNext ?? false,
    marks,
  };
}

/** The text, or as much of it as fits into `width` with an ellipsis after it. */
export function shortened(text: string, width: number, measure: (text: string) => number): string {
  if (measure(text) <= width) return text;
  const characters = [...text];
  while (characters.length > 0 && measure(`${characters.join('')}…`) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
