import { digitsOf } from './digits';
import { textBox, textWidth } from './metrics/measure';
import { outlineOf } from './outline';
import type { Ink, InkBox, InkRole, ScoreFont, TextInk } from './types';

/** One stroke of a path: SVG's command letter with its absolute coordinates, x before y. */
export interface Segment {
  readonly command: 'M' | 'L' | 'Q' | 'C' | 'Z';
  readonly points: readonly number[];
}

/** A path that can still be moved. */
export interface PathMark {
  readonly kind: 'path';
  readonly role: InkRole;
  readonly segments: readonly Segment[];
  /** Line width; 0 fills the path. */
  readonly stroke: number;
  readonly box: InkBox;
}

/** A piece of ink whose place is not final yet. */
export type Mark = PathMark | TextInk;

/** Size of the music font: a staff space is 10. */
export const MUSIC_SIZE = 40;

export function pathMark(role: InkRole, segments: readonly Segment[], stroke: number): PathMark {
  let left = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const { points } of segments) {
    for (let index = 0; index < points.length; index += 2) {
      const x = points[index] ?? 0;
      const y = points[index + 1] ?? 0;
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
  }
  // A straight line ends square where it stops, so its width counts across it only.
  const across = bottom - top < 0.01 ? 0 : stroke / 2;
  const along = right - left < 0.01 ? 0 : stroke / 2;
  const box = { left: left - across, right: right + across, top: top - along, bottom: bottom + along };
  return { kind: 'path', role, segments, stroke, box };
}

/** A straight line. */
export const lineMark = (
  role: InkRole,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  stroke: number,
): PathMark =>
  pathMark(
    role,
    [
      { command: 'M', points: [x1, y1] },
      { command: 'L', points: [x2, y2] },
    ],
    stroke,
  );

/** A filled rectangle. */
export const blockMark = (
  role: InkRole,
  left: number,
  top: number,
  right: number,
  bottom: number,
): PathMark =>
  pathMark(
    role,
    [
      { command: 'M', points: [left, top] },
      { command: 'L', points: [right, top] },
      { command: 'L', points: [right, bottom] },
      { command: 'L', points: [left, bottom] },
      { command: 'Z', points: [] },
    ],
    0,
  );

interface TextStyle {
  readonly size: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Which end of the text `x` is; the left one when left out. */
  readonly anchor?: 'left' | 'middle' | 'right';
}

/** A text with its baseline at `y`. */
export function textMark(role: InkRole, text: string, x: number, y: number, style: TextStyle): TextInk {
  const { size, bold = false, italic = false, anchor = 'left' } = style;
  const width = textWidth(text, size, bold);
  const left = anchor === 'left' ? x : anchor === 'middle' ? x - width / 2 : x - width;
  return fontMark(role, text, left, y, 'Academico', size, bold, italic);
}

/** A glyph of the music font with its origin at `x`, `y`. */
export const glyphMark = (role: InkRole, code: number, x: number, y: number, size = MUSIC_SIZE): TextInk =>
  fontMark(role, String.fromCodePoint(code), x, y, 'Bravura', size, false, false);

export const fontMark = (
  role: InkRole,
  text: string,
  x: number,
  y: number,
  font: ScoreFont,
  size: number,
  bold: boolean,
  italic: boolean,
): TextInk => ({
  kind: 'text',
  text,
  role,
  x,
  y,
  font,
  bold,
  italic,
  size,
  box: textBox(text, x, y, { font, size, bold, italic }),
});

export function moveMark(mark: Mark, dx: number, dy: number): Mark {
  if (dx === 0 && dy === 0) return mark;
  const box = moveBox(mark.box, dx, dy);
  if (mark.kind === 'text') return { ...mark, x: mark.x + dx, y: mark.y + dy, box };
  const segments = mark.segments.map(({ command, points }) => ({
    command,
    points: points.map((value, index) => value + (index % 2 === 0 ? dx : dy)),
  }));
  return { ...mark, segments, box };
}

const moveBox = (box: InkBox, dx: number, dy: number): InkBox => ({
  left: box.left + dx,
  right: box.right + dx,
  top: box.top + dy,
  bottom: box.bottom + dy,
});

/** The rectangle around several marks; null for none. */
export function boxOf(marks: readonly Mark[]): InkBox | null {
  const [first] = marks;
  if (first === undefined) return null;
  let { left, right, top, bottom } = first.box;
  for (const { box } of marks) {
    if (box.left < left) left = box.left;
    if (box.right > right) right = box.right;
    if (box.top < top) top = box.top;
    if (box.bottom > bottom) bottom = box.bottom;
  }
  return { left, right, top, bottom };
}

/** The mark as it is drawn, moved down by `down`. */
export function finishMark(mark: Mark, down: number): Ink {
  const box = moveBox(mark.box, 0, down);
  if (mark.kind === 'text') {
    const [x, y] = [round(mark.x), round(mark.y + down)];
    const outline = outlineOf(mark);
    return outline === null ? { ...mark, x, y, box } : { ...mark, x, y, box, outline };
  }
  const { kind, role, stroke } = mark;
  let d = '';
  for (const { command, points } of mark.segments) {
    d += command;
    for (let index = 0; index < points.length; index += 2) {
      const x = points[index] ?? 0;
      const y = points[index + 1] ?? 0;
      d += `${index > 0 ? ' ' : ''}${digitsOf(x)} ${digitsOf(y + down)}`;
    }
  }
  return { kind, role, stroke, box, d };
}

const round = (value: number): number => Math.round(value * 100) / 100;
