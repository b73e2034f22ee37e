import type { Row } from './rows';

/** Room for rows on the first page and on every later one, in points. */
export interface Room {
  readonly first: number;
  readonly later: number;
}

/** A last page that is filled less than this looks left behind. */
const LEAST_FILL = 0.35;
/** Outweighs every unevenness of the other pages, so a page is left short only when nothing else is possible. */
const STRANDED = 100;

interface Plan {
  /** Pages to the end of the rows. */
  readonly pages: number;
  readonly cost: number;
  /** First row after this page. */
  readonly end: number;
  readonly next: Plan | null;
}

/**
 * Parts rows into pages: as few as possible; rows that belong together together; a last page never left with a
 * few lines as long as earlier pages can give some of theirs. A row that is taller than a page gets a page to
 * itself.
 *
 * @returns the rows of each page
 */
export function breakPages(rows: readonly Row[], room: Room): readonly (readonly Row[])[] {
  if (rows.length === 0) return [[]];
  const later = bestPlans(rows, room.later);
  const pages: Row[][] = [];
  let start = 0;
  for (let plan = bestPlan(rows, 0, room.first, later, false); plan !== null; plan = plan.next) {
    pages.push(pageFrom(rows.slice(start, plan.end), start > 0));
    start = plan.end;
  }
  return pages;
}

/** A page that begins within a part has the part's heading over it again. */
function pageFrom(rows: readonly Row[], later: boolean): Row[] {
  const heading = later ? rows[0]?.heading : undefined;
  return heading === undefined ? [...rows] : [heading, ...rows];
}

const headingHeight = (row: Row | undefined): number =>
  row?.heading === undefined ? 0 : row.heading.height + row.gap;

/** For every row, the best way to set it and all after it when it begins a page that is not the first. */
function bestPlans(rows: readonly Row[], room: number): readonly (Plan | null)[] {
  const plans: (Plan | null)[] = Array.from({ length: rows.length + 1 }, () => null);
  for (let start = rows.length - 1; start > 0; start -= 1) {
    plans[start] = bestPlan(rows, start, room, plans, true);
  }
  return plans;
}

function bestPlan(
  rows: readonly Row[],
  start: number,
  room: number,
  later: readonly (Plan | null)[],
  afterAnother: boolean,
): Plan | null {
  let best: Plan | null = null;
  let height = start > 0 ? headingHeight(rows[start]) : 0;
  for (let end = start + 1; end <= rows.length; end += 1) {
    const row = rows[end - 1];
    if (row === undefined) break;
    height += row.height + (end - 1 === start ? 0 : row.gap);
    if (height > room && end > start + 1) {
      // What should stay together is taller than a page: it is cut where the page ends.
      return best ?? planTo(end - 1, 1, later, false);
    }
    if (row.keepWithNext && end < rows.length) continue;
    const plan = planTo(end, height / room, later, afterAnother && end === rows.length);
    if (best === null || plan.pages < best.pages || (plan.pages === best.pages && plan.cost < best.cost)) {
      best = plan;
    }
  }
  return best;
}

/** A page that ends before row `end`, and the best that can follow it. */
function planTo(end: number, fill: number, later: readonly (Plan | null)[], isLast: boolean): Plan {
  const next = later[end] ?? null;
  const stranded = isLast && fill < LEAST_FILL ? STRANDED : 0;
  const uneven = next === null ? 0 : Math.max(0, 1 - fill) ** 2;
  return { pages: 1 + (next?.pages ?? 0), cost: stranded + uneven + (next?.cost ?? 0), end, next };
}

/** How much of the pages before the last stays white, as a cost: one half-empty page is worse than two quarters. */
export function whiteness(pages: readonly (readonly Row[])[], room: Room): number {
  return pages.slice(0, -1).reduce((sum, rows, index) => {
    const height = index === 0 ? room.first : room.later;
    return sum + Math.max(0, 1 - rowsHeight(rows) / height) ** 2;
  }, 0);
}

/** White space above a row grows to this many times itself at most, and by so many points, to fill a page. */
const MOST_TIMES = 3;
const MOST_MORE = 30;

/**
 * The rows of a page that another follows, with the white space between them grown so that they reach down to the
 * page's foot, as far as that still looks like one page.
 */
export function spreadOut(rows: readonly Row[], height: number): readonly Row[] {
  return grown(rows, height, ({ gap }) => Math.min(MOST_MORE, gap * (MOST_TIMES - 1)));
}

/** White space over a system on a page that has room for it, in points. */
const ROOMY = 14;

/** The rows of a last page: where systems stand closer than need be, they move apart as far as there is room. */
export function movedApart(rows: readonly Row[], height: number): readonly Row[] {
  return grown(rows, height, ({ gap, marks }) =>
    marks.some(({ kind }) => kind === 'system') ? Math.max(0, ROOMY - gap) : 0,
  );
}

/** Rows with the white space above each but the first grown as is wished, all by one share of it where room is short. */
function grown(rows: readonly Row[], height: number, wish: (row: Row) => number): readonly Row[] {
  const left = height - rowsHeight(rows);
  const growth = rows.map((row, index) => (index === 0 ? 0 : wish(row)));
  const most = growth.reduce((sum, more) => sum + more, 0);
  if (left <= 0 || most === 0) return rows;
  const share = Math.min(1, left / most);
  return rows.map((row, index) => ({ ...row, gap: row.gap + (growth[index] ?? 0) * share }));
}

/** Height of rows set one under the other. */
export const rowsHeight = (rows: readonly Row[]): number =>
  rows.reduce((sum, row, index) => sum + row.height + (index === 0 ? 0 : row.gap), 0);
