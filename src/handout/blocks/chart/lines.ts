import type { Cell } from './cells';

/** Usual bars in a line of a chart; common practice, no source. */
const USUAL_BARS = 4;

/** What a line costs that holds so many bars although others follow: twos read as phrases, threes and ones do not. */
const COSTS: readonly number[] = [0, 3, 1, 2, 0];
const TOO_WIDE = 1000;

/** A cell and the least width it can have. */
export interface WideCell {
  readonly cell: Cell;
  readonly least: number;
}

/**
 * Parts a chart into lines: each section begins one, a line holds four bars where they have room, else two; a pickup
 * is not counted. The cheapest of all ways.
 */
export function linesOf(cells: readonly WideCell[], width: number): readonly (readonly WideCell[])[] {
  const lines: (readonly WideCell[])[] = [];
  let from = 0;
  while (from < cells.length) {
    let to = from + 1;
    while (to < cells.length && !startsSection(cells, to)) to += 1;
    lines.push(...sectionLines(cells.slice(from, to), width));
    from = to;
  }
  return lines;
}

/** A pickup that stands before its section alone belongs to it; the coda stands apart. */
function startsSection(cells: readonly WideCell[], index: number): boolean {
  const [before, now] = [cells[index - 1]?.cell, cells[index]?.cell];
  if (now?.signs.includes('coda') === true) return true;
  return before?.section !== now?.section && !(index === 1 && before?.pickup === true);
}

interface Best {
  readonly cost: number;
  readonly first: number;
}

function sectionLines(cells: readonly WideCell[], width: number): readonly (readonly WideCell[])[] {
  const best: Best[] = [{ cost: 0, first: 0 }];
  for (let end = 1; end <= cells.length; end += 1) {
    let chosen: Best = { cost: Number.POSITIVE_INFINITY, first: end - 1 };
    for (let first = end - 1; first >= 0; first -= 1) {
      const line = cells.slice(first, end);
      const bars = line.filter(({ cell }) => !cell.pickup).length;
      if (bars > USUAL_BARS) break;
      const wide = line.reduce((sum, { least }) => sum + least, 0) > width && line.length > 1;
      const last = end === cells.length ? 0.5 : 1;
      const own = (COSTS[bars] ?? 0) * last + (wide ? TOO_WIDE * bars : 0) + 0.01;
      const cost = (best[first]?.cost ?? 0) + own;
      if (cost < chosen.cost) chosen = { cost, first };
    }
    best.push(chosen);
  }
  const lines: (readonly WideCell[])[] = [];
  for (let end = cells.length; end > 0; ) {
    const first = best[end]?.first ?? end - 1;
    lines.unshift(cells.slice(first, end));
    end = first;
  }
  return lines;
}

/**
 * The widths of the bars of a line: a quarter of the line each, so that bars stand under each other, except where
 * symbols need more; those have what they need, and the others share what is left. A pickup has the least.
 */
export function widthsOf(line: readonly WideCell[], width: number): readonly number[] {
  const bars = line.filter(({ cell }) => !cell.pickup);
  const pickups = line.reduce((sum, { cell, least }) => sum + (cell.pickup ? least : 0), 0);
  const room = Math.min(width - pickups, (bars.length * width) / USUAL_BARS);
  const needed = bars.reduce((sum, { least }) => sum + least, 0);
  const most = Math.max(room, Math.min(needed, width - pickups));
  const share = fairShare(
    bars.map(({ least }) => least),
    most,
  );
  return line.map(({ cell, least }) => (cell.pickup ? least : Math.max(least, share)));
}

/** The width that all get who need no more, when those who do have taken theirs. */
function fairShare(needs: readonly number[], room: number): number {
  const sorted = [...needs].sort((one, other) => other - one);
  let left = room;
  for (const [index, need] of sorted.entries()) {
    const share = left / (sorted.length - index);
    if (need <= share) return share;
    left -= need;
  }
  return 0;
}
