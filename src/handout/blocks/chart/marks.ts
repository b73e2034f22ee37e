import type { Metre } from '../../../core/base';
import type { Mark, TextStyle } from '../../layout/marks';
import type { BlockContext } from '../context';
import type { Cell, CellSymbol } from './cells';
import type { WideCell } from './lines';

const PADDING = 5;
/** White between two symbols, as a share of their size. */
const SYMBOL_GAP = 0.45;
const RAISED = 0.77;
const LIFT = 0.3;
const THIN = 0.6;
const THICK = 2.2;
const APART = 2;
const HOOK = 0.55;
/** Room for a segno or coda, by the size of the small print. */
const SIGN_ROOM = 1.6;
/** Signs with a Unicode meaning of their own (Unicode, Musical Symbols). */
const SIGNS = {
  segno: '\u{1D10B}',
  coda: '\u{1D10C}',
  'like the bar before': '\u{1D10E}',
  'like the two bars before': '\u{1D10F}',
  dots: '\u{1D108}',
} as const;

/** Everything on a chart's lines that has a size. */
export interface ChartLook {
  readonly symbol: TextStyle;
  readonly raised: TextStyle;
  readonly small: TextStyle;
  readonly height: number;
  readonly measure: BlockContext['measure'];
}

/** @param shrink below 1 where one bar is wider than the page */
export function lookOf({ sizes, measure }: BlockContext, shrink = 1): ChartLook {
  const size = sizes.score.chord * shrink;
  const raised = { size: Math.max(size * RAISED, sizes.small.size * shrink), bold: true };
  const symbol = { size, bold: true };
  return { symbol, raised, small: sizes.small, height: size * 1.75, measure };
}

function symbolWidth({ base, raised, bass }: CellSymbol, look: ChartLook): number {
  return (
    look.measure(base, look.symbol) + look.measure(raised, look.raised) + look.measure(bass, look.symbol)
  );
}

const metreWidth = (metre: Metre, { small, measure }: ChartLook): number =>
  Math.max(...[metre.count, metre.unit].map((number) => measure(String(number), { ...small, bold: true })));

/** Room for the signs at a bar's beginning and at its end. */
function signRoom(cell: Cell, look: ChartLook): { readonly before: number; readonly after: number } {
  const dots = look.symbol.size * 0.13 + 2 * APART + THIN + THICK;
  return {
    before:
      PADDING +
      (cell.metre === null ? 0 : metreWidth(cell.metre, look) + PADDING) +
      (cell.repeatStart ? dots : 0),
    after: PADDING + (cell.repeatEnd ? dots : cell.line === 'final' ? THICK + APART : 0),
  };
}

/** The least width a bar can have: its symbols side by side, and whatever stands over them. */
export function leastWidth(cell: Cell, look: ChartLook): number {
  const { before, after } = signRoom(cell, look);
  const gap = look.symbol.size * SYMBOL_GAP;
  const symbols = cell.symbols.reduce((sum, symbol) => sum + symbolWidth(symbol, look) + gap, -gap);
  const texts = [cell.opening, cell.closing].filter((text) => text !== '');
  const over = texts.reduce(
    (sum, text) => sum + look.measure(text, look.small) + PADDING,
    PADDING + (cell.signs.length + (cell.leadsToCoda ? 1 : 0)) * look.small.size * SIGN_ROOM,
  );
  const ending = cell.endingStarts ? look.measure(cell.ending ?? '', look.small) + 2 * PADDING : 0;
  return Math.max(before + symbols + after, over, ending);
}

/** How a bar is written in its line: out, or by a sign that says which bars it is like. */
type Written = 'out' | 'like the bar before' | 'like the two bars before' | 'second of two';

/** The first bar of a line is always written out, so that no one has to look back for its chords. */
function writtenIn(line: readonly WideCell[]): readonly Written[] {
  const written: Written[] = [];
  const plain = (index: number): boolean => line[index]?.cell.begins === false;
  for (let index = 0; index < line.length; index += 1) {
    const cell = line[index]?.cell;
    const next = line[index + 1]?.cell;
    if (index > 0 && plain(index) && cell?.likeBefore === true) written.push('like the bar before');
    else if (
      index > 1 &&
      plain(index) &&
      plain(index - 1) &&
      plain(index + 1) &&
      cell?.likeTwoBefore === true &&
      next?.likeTwoBefore === true &&
      !next.likeBefore &&
      written.slice(-2).every((before) => before === 'out')
    ) {
      written.push('like the two bars before', 'second of two');
      index += 1;
    } else written.push('out');
  }
  return written;
}

/** A line of a chart: its height, and its marks from its top left corner. */
export interface DrawnLine {
  readonly height: number;
  readonly marks: readonly Mark[];
}

export function drawLine(line: readonly WideCell[], widths: readonly number[], look: ChartLook): DrawnLine {
  const { small } = look;
  const hasSigns = line.some(
    ({ cell }) => cell.signs.length > 0 || cell.opening !== '' || cell.closing !== '',
  );
  const hasEndings = line.some(({ cell }) => cell.ending !== null);
  const signsHeight = hasSigns ? small.size * 1.3 : 0;
  const top = signsHeight + (hasEndings ? small.size * 1.35 : 0);
  const written = writtenIn(line);
  const marks: Mark[] = [];
  let left = 0;
  line.forEach(({ cell }, index) => {
    const place: CellPlace = { left, right: left + (widths[index] ?? 0), top, bottom: top + look.height };
    marks.push(...wayMarks(cell, place, small.size * 0.95, look));
    if (cell.ending !== null) marks.push(...endingMarks(cell, place, signsHeight + 2, look));
    marks.push(...lineMarks(line, index, place, look));
    marks.push(...contentMarks(cell, written[index] ?? 'out', place, look));
    left = place.right;
  });
  return { height: top + look.height, marks };
}

interface CellPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const text = (
  content: string,
  style: TextStyle,
  x: number,
  y: number,
  anchor: 'start' | 'middle' | 'end' = 'start',
): Mark => ({
  kind: 'text',
  text: content,
  ...style,
  x,
  y,
  anchor,
});

/** Segno, coda and a new key over a bar's beginning; how often, and the words of the way, over its end. */
function wayMarks(
  cell: Cell,
  place: CellPlace,
  baseline: number,
  { small, measure }: ChartLook,
): readonly Mark[] {
  const marks: Mark[] = [];
  let x = place.left + PADDING / 2;
  for (const sign of cell.signs) {
    marks.push(text(SIGNS[sign], small, x, baseline));
    x += small.size * SIGN_ROOM;
  }
  if (cell.opening !== '') marks.push(text(cell.opening, small, x, baseline));
  if (cell.closing !== '') {
    const sign = cell.leadsToCoda ? small.size * SIGN_ROOM : 0;
    const end = place.right - PADDING / 2;
    marks.push(text(cell.closing, small, end - sign - measure(cell.closing, small), baseline));
    if (cell.leadsToCoda) marks.push(text(SIGNS.coda, small, end - sign + small.size * 0.3, baseline));
  }
  return marks;
}

/** One bracket over all bars of an ending; it turns down where it begins and where it leads back. */
function endingMarks(
  cell: Cell,
  { left, right, top }: CellPlace,
  y: number,
  { small }: ChartLook,
): readonly Mark[] {
  const hook = (top - y) * HOOK * 1.5;
  const from = left + (cell.endingStarts ? 1 : 0);
  const to = right - (cell.endingEnds === null ? 0 : 1.5);
  const upright = (x: number): Mark => ({ kind: 'rule', x, y, width: 0, height: hook });
  return [
    { kind: 'rule', x: from, y, width: to - from, height: 0 },
    ...(cell.endingStarts
      ? [upright(from), text(cell.ending ?? '', small, from + PADDING / 2, y + small.size * 0.95)]
      : []),
    ...(cell.endingEnds === 'closed' ? [upright(to)] : []),
  ];
}

/** The bar lines of a bar: at its end, at a line's beginning, and with the dots of a repeat. */
function lineMarks(
  line: readonly WideCell[],
  index: number,
  { left, right, top, bottom }: CellPlace,
  { symbol }: ChartLook,
): readonly Mark[] {
  const cell = line[index]?.cell;
  const next = line[index + 1]?.cell;
  const height = bottom - top;
  const bar = (x: number, width: number): Mark => ({ kind: 'block', x, y: top, width, height });
  const size = symbol.size * 1.3;
  // The dots' middle lies this far over their baseline, in shares of their size (Bravura).
  const dots = (x: number): Mark =>
    text(SIGNS.dots, { size, bold: false }, x, top + height / 2 + size * 0.494);
  const marks: Mark[] = [];
  if (cell?.repeatStart === true) {
    // Two repeats that meet share the thick line.
    const x = index > 0 && line[index - 1]?.cell.repeatEnd === true ? left - THICK : left;
    marks.push(bar(x, THICK), bar(x + THICK + APART, THIN), dots(x + THICK + THIN + 2 * APART));
  } else if (index === 0) marks.push(bar(left, THIN));
  if (cell?.repeatEnd === true) {
    const thin = right - THICK - APART - THIN;
    marks.push(bar(right - THICK, THICK), bar(thin, THIN), dots(thin - APART - size * 0.1));
  } else if (next?.repeatStart === true) return marks;
  else if (cell?.line === 'final')
    marks.push(bar(right - THICK, THICK), bar(right - THICK - APART - THIN, THIN));
  else if (cell?.line === 'double') marks.push(bar(right - THIN, THIN), bar(right - 2 * THIN - APART, THIN));
  else marks.push(bar(right - THIN, THIN));
  return marks;
}

/** A bar's metre, where it is new, and its chords by their beats, or the sign of a repeated bar. */
function contentMarks(cell: Cell, written: Written, place: CellPlace, look: ChartLook): readonly Mark[] {
  const { symbol } = look;
  const { before, after } = signRoom(cell, look);
  const middle = (place.top + place.bottom) / 2;
  const marks: Mark[] = [];
  if (cell.metre !== null)
    marks.push(
      ...metreMarks(
        cell.metre,
        place,
        cell.repeatStart ? before - PADDING - metreWidth(cell.metre, look) : PADDING,
        look,
      ),
    );
  if (written === 'second of two') return marks;
  if (written !== 'out') {
    const x = written === 'like the bar before' ? (place.left + place.right) / 2 : place.right;
    const size = symbol.size * 1.5;
    return [...marks, text(SIGNS[written], { size, bold: false }, x, middle, 'middle')];
  }
  const baseline = middle + symbol.size * 0.36;
  const room = place.right - place.left - before - after;
  let free = place.left + before;
  let left = cell.symbols.reduce((sum, one) => sum + symbolWidth(one, look) + symbol.size * SYMBOL_GAP, 0);
  for (const one of cell.symbols) {
    // In proportion to the beats, but never so far right that what follows has no room.
    const latest = place.right - after - left + symbol.size * SYMBOL_GAP;
    let x = Math.max(free, Math.min(latest, place.left + before + room * one.at));
    const width = symbolWidth(one, look);
    free = x + width + symbol.size * SYMBOL_GAP;
    left -= width + symbol.size * SYMBOL_GAP;
    const part = (content: string, style: TextStyle, y: number): void => {
      if (content === '') return;
      marks.push(text(content, style, x, y));
      x += look.measure(content, style);
    };
    part(one.base, one.base === '/' ? { ...symbol, bold: false } : symbol, baseline);
    part(one.raised, look.raised, baseline - symbol.size * LIFT);
    part(one.bass, symbol, baseline);
  }
  return marks;
}

/** Count over unit, as on a staff. */
function metreMarks(metre: Metre, place: CellPlace, x: number, look: ChartLook): readonly Mark[] {
  const style = { ...look.small, bold: true };
  const middle = (place.top + place.bottom) / 2;
  const centre = place.left + x + metreWidth(metre, look) / 2;
  // Academico's figures are 0.72 of their size high.
  return [
    text(String(metre.count), style, centre, middle - 1, 'middle'),
    text(String(metre.unit), style, centre, middle + 1 + style.size * 0.72, 'middle'),
  ];
}
