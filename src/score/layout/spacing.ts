/**
 * Horizontal spacing as pure numbers. A bar is a row of columns (moments with ink), with a gap before the first,
 * between neighbours and after the last. Each gap has a least width, below which ink would touch, and a natural
 * width, by the length of time alone; a line is filled by stretching all natural widths by one factor, where they
 * leave the least width (rods and springs: J. S. Gourlay, "Spacing a line of music", Ohio State University, 1987).
 */

export interface Column {
  /** From the bar's beginning. */
  readonly tick: number;
  /** How far ink reaches left and right of the column's middle. */
  readonly left: number;
  readonly right: number;
  /** To the middle of the next column, at least; left out where all of its ink is in the way of all of the other's. */
  readonly toNext?: number;
}

export interface Gap {
  readonly least: number;
  readonly natural: number;
  /** However far the line is stretched; without limit for what is time. */
  readonly most?: number;
  /** The factor from which on no ink is in the way of the bar's proportions. */
  readonly even?: number;
}

export interface BarSpacing {
  /** Signs at the bar's beginning (time signature, repeat) and end (repeat, thick line): not stretched. */
  readonly before: number;
  readonly after: number;
  readonly columns: readonly Column[];
  /** One more than columns. */
  readonly gaps: readonly Gap[];
}

/** A text that must stay clear of what follows it: from one column to another, or to the bar's end. */
export interface Span {
  readonly from: number;
  /** Index of a column, or the number of columns for the bar's end. */
  readonly to: number;
  readonly width: number;
}

const QUARTER = 960;
/**
 * A quarter's natural width, and how much wider a note of twice the length stands. Engravers' tables lie between 1.4 and
 * 1.6: T. Ross, "The Art of Music Engraving and Processing" (1970), 1.4 (from memory).
 */
const QUARTER_WIDTH = 31;
const DOUBLING = 1.45;
/** White between the ink of two columns. */
const CLEARANCE = 4;
/** Bar line to the first head, and the last note's space to the bar line. */
const LEAD = 15;
const LEAST_LEAD = 11;
const MOST_LEAD = 24;
const LEAST_TAIL = 7;
/** So much wider than its time a gap may be and still stand in the table's proportion to those twice and half as long. */
const SLACK = 1.03;
/**
 * A bar in which ink asks for more room than its time gives it grows as a whole, so that its notes stay in proportion, up
 * to so many times the width of its neighbours; in a line that is full it grows the less the fuller the line, and at
 * last a gap whose ink needs it is wider than its time. The figures are ours.
 */
const MOST_GROWTH = 2.3;
const FULL = { from: 0.86, to: 0.84 } as const;

const naturalWidth = (ticks: number): number => QUARTER_WIDTH * DOUBLING ** Math.log2(ticks / QUARTER);

/**
 * The gaps of a bar.
 * @param columns in order of time; at least one
 * @param length of the bar in ticks
 * @param spans widen the bar until their text has room
 */
export function gapsOf(columns: readonly Column[], length: number, spans: readonly Span[]): readonly Gap[] {
  const gaps: { -readonly [Key in keyof Gap]: Gap[Key] }[] = [];
  const reach = columns[0]?.left ?? 0;
  gaps.push({ least: reach + LEAST_LEAD, natural: reach + LEAD, most: reach + MOST_LEAD });
  columns.forEach((column, index) => {
    const next = columns[index + 1];
    const duration = (next?.tick ?? length) - column.tick;
    const least = next ? (column.toNext ?? column.right + next.left + CLEARANCE) : column.right + LEAST_TAIL;
    gaps.push({ least, natural: naturalWidth(Math.max(duration, 60)) });
  });
  const even = Math.max(0, ...gaps.slice(1, -1).map(({ least, natural }) => least / (natural * SLACK)));
  const factor = Math.max(0, ...spans.map((span) => factorForText(gaps, span)));
  if (factor > 0) for (const gap of gaps) gap.least = stretched(gap, factor, grownBy(factor));
  for (const gap of gaps.slice(1)) gap.even = even;
  return gaps;
}

/**
 * The factor at which a text has room over the gaps it covers; 0 where it has it at their least. The whole bar is then
 * held to it, so that notes of one length stand equally far apart, whatever the symbols over them.
 */
function factorForText(gaps: readonly Gap[], { from, to, width }: Span): number {
  const covered = gaps.slice(from + 1, to + 1);
  const room = (factor: number): number =>
    covered.reduce((sum, { least, natural }) => sum + Math.max(least, natural * factor), 0);
  if (covered.length === 0 || room(0) >= width) return 0;
  let [low, high] = [0, width / Math.min(...covered.map(({ natural }) => natural))];
  for (let round = 0; round < 30; round += 1) {
    const middle = (low + high) / 2;
    if (room(middle) < width) low = middle;
    else high = middle;
  }
  return high;
}

/** @param grown the factor for bars that grow as a whole */
function stretched(gap: Gap, factor: number, grown: number): number {
  const { least, natural, most = Number.POSITIVE_INFINITY, even = 0 } = gap;
  return Math.min(most, Math.max(least, natural * Math.max(factor, Math.min(even, grown))));
}

const grownBy = (factor: number): number => factor * growthAt(factor);

/** How much wider than its neighbours a bar may be set to stay in proportion. */
function growthAt(factor: number): number {
  const share = (factor - FULL.to) / (FULL.from - FULL.to);
  return 1 + (MOST_GROWTH - 1) * Math.min(1, Math.max(0, share));
}

/** Width of a bar whose natural gaps are stretched by a factor; 0 gives the least width. */
export function widthAt({ before, after, gaps }: BarSpacing, factor: number): number {
  const grown = grownBy(factor);
  let width = 0;
  for (const gap of gaps) width += stretched(gap, factor, grown);
  return before + after + width;
}

/** A bar as a row of numbers: what is not stretched, and of each gap its least, natural and most, and what it is even from. */
type Springs = Float64Array;
const FIRST_SPRING = 2;
const OF_SPRING = 4;

/** A bar is asked for its width at many factors, for every system that it could stand in. */
const springs = new WeakMap<BarSpacing, Springs>();

function springsOf(bar: BarSpacing): Springs {
  const known = springs.get(bar);
  if (known) return known;
  const gaps = bar.gaps.map(({ least, natural, most = Number.POSITIVE_INFINITY, even = 0 }) => [
    least,
    natural,
    most,
    even,
  ]);
  const row = Float64Array.from([bar.before, bar.after, ...gaps.flat()]);
  springs.set(bar, row);
  return row;
}

/** Some bars, as wide as {@link widthAt} tells of each. */
class Stretch {
  private readonly rows: readonly Springs[];
  /** How fast the bars grew wider with the factor that was last asked for. */
  slope = 0;

  constructor(bars: readonly BarSpacing[]) {
    this.rows = bars.map(springsOf);
  }

  widthAt(factor: number): number {
    this.slope = 0;
    const grown = grownBy(factor);
    const growth = (grownBy(factor + STEP) - grown) / STEP;
    let width = 0;
    for (const row of this.rows) width += this.widthOf(row, factor, grown, growth);
    return width;
  }

  private widthOf(row: Springs, factor: number, grown: number, growth: number): number {
    let width = 0;
    let slope = 0;
    for (let at = FIRST_SPRING; at < row.length; at += OF_SPRING) {
      const natural = row[at + 1] ?? 0;
      const held = Math.min(row[at + 3] ?? 0, grown);
      const free = natural * Math.max(factor, held);
      const taken = Math.min(row[at + 2] ?? 0, Math.max(row[at] ?? 0, free));
      width += taken;
      if (taken !== free) continue;
      if (factor > held) slope += natural;
      else if (held === grown) slope += natural * growth;
    }
    this.slope += slope;
    return (row[0] ?? 0) + (row[1] ?? 0) + width;
  }
}

/** A factor at which bars have room, and one at which they have none; null where none is known. */
interface Bracket {
  readonly fits: number | null;
  readonly over: number;
}

/** Steps of Newton's method are enough on lines with few bends; factors are told apart finer than this. */
const MOST_STEPS = 10;
const NEAR = 2e-11;
/** A factor larger by this much tells how fast bars grow that grow as a whole. */
const STEP = 1e-6;

/** Closes in on the factor that fills a width, between 0 and one that is too wide, by Newton's method. */
function bracketFor(bars: Stretch, width: number, tooWide: number): Bracket {
  let fits: number | null = null;
  let over = tooWide;
  let factor = Math.min(1, tooWide / 2);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const left = width - bars.widthAt(factor);
    const isIn = left >= 0;
    if (isIn) fits = factor;
    else over = factor;
    const next = factor + left / bars.slope;
    const beside = factor + (isIn ? NEAR : -NEAR);
    factor = Math.abs(next - factor) < NEAR ? beside : next;
    if (!(factor > (fits ?? 0) && factor < over)) break;
  }
  return { fits, over };
}

/** So often a factor's range is halved. */
const HALVINGS = 40;

/** Where halving would end between two factors; null where there is more than one such place, or digits would be lost. */
function pinnedBy(fits: number, over: number, most: number): number | null {
  const step = most / 2 ** HALVINGS;
  const low = Math.floor(fits / step) * step;
  return Number.isInteger(most) && most < 2 ** 12 && low + step >= over ? low : null;
}

/**
 * The factor at which bars fill a width exactly, at most `most`: found by halving, where what was closed in on before
 * answers nearly all questions.
 * @returns 0 when they are too wide even at their least
 */
export function factorFor(bars: readonly BarSpacing[], width: number, most: number): number {
  const line = new Stretch(bars);
  if (line.widthAt(most) <= width) return most;
  if (line.widthAt(0) > width) return 0;
  const { fits, over } = bracketFor(line, width, most);
  const pinned = fits === null ? null : pinnedBy(fits, over, most);
  if (pinned !== null) return pinned;
  let low = 0;
  let high = most;
  for (let round = 0; round < HALVINGS; round += 1) {
    const middle = (low + high) / 2;
    // Wider bars never come of a smaller factor.
    const isIn = middle <= (fits ?? 0) || (middle < over && line.widthAt(middle) <= width);
    if (isIn) low = middle;
    else high = middle;
  }
  return low;
}

/** Whether every bar of a line stays in proportion at a factor. */
export function staysEven(bars: readonly BarSpacing[], factor: number): boolean {
  const grown = grownBy(factor) + ROUNDING;
  return bars.every(({ gaps }) => gaps.every(({ even = 0 }) => even <= grown));
}

const ROUNDING = 1e-6;

/** Where the columns of a bar stand, from its left bar line, and its width. */
export function placeColumns(
  bar: BarSpacing,
  factor: number,
): { readonly xs: readonly number[]; readonly width: number } {
  const grown = grownBy(factor);
  let x = bar.before;
  const xs: number[] = [];
  bar.gaps.forEach((gap, index) => {
    x += stretched(gap, factor, grown);
    if (index < bar.columns.length) xs.push(x);
  });
  return { xs, width: x + bar.after };
}
