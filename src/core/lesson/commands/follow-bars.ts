import { barTicks } from '../../base';
import { barSignature, type Chart, type ChartBar, matchBars, matchByCaret } from '../../chart';
import type { Key } from '../../theory';
import { parsedChart } from '../request';
import { spelledByChords } from '../spelling';
import type { LessonAim, LineBar, LinePiece } from '../types';

/* Which bars of a line go on as which when its chart changes, and which wait outside it. */

/** A chord of the bar cannot be read. */
export const isUnknown = (bar: ChartBar): boolean =>
  bar.spans.some((span) => span.harmony.kind === 'unknown');

const fits = (bar: LineBar, written: ChartBar): boolean =>
  bar.notes.every((note) => note.start + note.duration <= barTicks(written.metre));

/** Notes that were written without chords. */
const isWithoutChords = ({ harmony }: LineBar): boolean =>
  harmony.split(' ').every((span) => span.startsWith('N.C.@'));

/** Notes that were not composed for their chords stay when those change: they are the teacher's own. */
const staysByPlace = (bar: LineBar): boolean => bar.origin === 'hand';

/** Every bar in its own place, where the chart has as many bars as before and no notes would be lost; else null. */
function inPlace(old: readonly LineBar[], written: readonly ChartBar[]): (LineBar | null)[] | null {
  if (old.length !== written.length) return null;
  const stays = old.map((bar, index) => {
    const now = written[index];
    return (
      now !== undefined &&
      (bar.harmony === barSignature(now) || ((isUnknown(now) || staysByPlace(bar)) && fits(bar, now)))
    );
  });
  return old.every((bar, index) => stays[index] === true || bar.notes.length === 0)
    ? old.map((bar, index) => (stays[index] === true ? bar : null))
    : null;
}

/**
 * Which old bar belongs to each new one: first by content and order; then, as long as its place between its
 * neighbours is plain, a bar of the teacher's own keeps its notes under other chords, and any bar does whose chord
 * cannot be read just now (half typed).
 */
export function followBars(
  old: readonly LineBar[],
  written: readonly ChartBar[],
  matches: readonly (number | null)[],
): (LineBar | null)[] {
  const alike = inPlace(old, written);
  if (alike !== null) return alike;
  const result: (LineBar | null)[] = matches.map((index) => (index === null ? null : (old[index] ?? null)));
  let nextFree = 0;
  written.forEach((bar, index) => {
    const match = matches[index] ?? null;
    if (match !== null) {
      nextFree = match + 1;
      return;
    }
    const following = matches.slice(index + 1).find((other) => other !== null) ?? old.length;
    const candidate = old[nextFree];
    if (candidate === undefined || nextFree >= following) {
      return;
    }
    nextFree += 1;
    if ((isUnknown(bar) || staysByPlace(candidate)) && fits(candidate, bar)) {
      result[index] = candidate;
    }
  });
  return result;
}

/** Takes a parked bar written for the same harmony back into the line, so a slip of the pen costs nothing. */
export function takeParked(parked: LineBar[], written: ChartBar): LineBar | null {
  const signature = barSignature(written);
  const index = parked.findIndex((bar) => bar.harmony === signature && fits(bar, written));
  return index < 0 ? null : (parked.splice(index, 1)[0] ?? null);
}

/** Bars are numbered in the order in which they came to be. */
const numberOf = ({ id }: LineBar): number => Number(/-(\d{1,9})$/.exec(id)?.[1] ?? Number.NaN);

function taken(
  parked: LineBar[],
  bar: LineBar | undefined,
  written: ChartBar,
  key: () => Key,
): LineBar | null {
  if (bar === undefined || !fits(bar, written)) return null;
  parked.splice(parked.indexOf(bar), 1);
  return underChords(bar, written, key);
}

/**
 * The parked bar of the teacher's own that came right behind the bar before; with no bar before it, the first of them.
 * So a line that was read from a file comes back bar by bar when its whole chart is selected and another typed.
 */
export function takeNext(
  parked: LineBar[],
  written: ChartBar,
  before: LineBar | null,
  key: () => Key,
): LineBar | null {
  const own = parked.filter(staysByPlace);
  const next = before === null ? Math.min(...own.map(numberOf)) : numberOf(before) + 1;
  return taken(
    parked,
    own.find((each) => numberOf(each) === next),
    written,
    key,
  );
}

/**
 * The first parked bar of the teacher's own that had no chords, as an imported line has: chords that are typed from the
 * beginning come over its bars in their order.
 */
export const takeUnwritten = (parked: LineBar[], written: ChartBar, key: () => Key): LineBar | null =>
  taken(
    parked,
    parked.find((bar) => bar.origin === 'hand' && isWithoutChords(bar)),
    written,
    key,
  );

/**
 * Which bar of the line belongs to each bar of a chart whose change is known. Each bar of `order` is an old one,
 * for its second time a copy of it, or null for a new bar; an old one whose chords are others is not kept. Null where the chart came out otherwise, as when a
 * section is used again by its name.
 */
export function followOrder(
  order: readonly (LineBar | null)[],
  written: readonly ChartBar[],
  copy: (bar: LineBar) => LineBar,
): (LineBar | null)[] | null {
  if (order.length !== written.length) return null;
  const seen = new Set<LineBar>();
  const followed: (LineBar | null)[] = [];
  for (const [index, bar] of written.entries()) {
    const old = order[index] ?? null;
    const stays =
      old !== null &&
      (old.harmony === barSignature(bar) || ((isUnknown(bar) || staysByPlace(old)) && fits(old, bar)));
    followed.push(!stays ? null : seen.has(old) ? copy(old) : old);
    if (stays) seen.add(old);
  }
  return followed;
}

/**
 * The bar with the chords that it now stands under, its notes spelled by them; a chord that cannot be read yet leaves
 * it those it had.
 */
export function underChords(bar: LineBar, written: ChartBar, key: () => Key): LineBar {
  const harmony = barSignature(written);
  if (bar.harmony === harmony || isUnknown(written)) return bar;
  return { ...spelledByChords(bar, written, key()), harmony };
}

/** Which old bar goes on as each new one; by the caret only where bars came or went, since it reads the old chart again. */
export function matchesOf(
  piece: LinePiece,
  text: string,
  chart: Chart,
  caret: number | null,
): readonly (number | null)[] {
  if (caret !== null && chart.bars.length !== piece.bars.length) {
    const before = parsedChart(piece).chart;
    const asWritten = before.bars.every((bar, index) => barSignature(bar) === piece.bars[index]?.harmony);
    if (asWritten && before.bars.length === piece.bars.length) {
      return matchByCaret({ text: piece.chartText, chart: before }, { text, chart }, caret);
    }
  }
  return matchBars(
    piece.bars.map((bar) => bar.harmony),
    chart.bars.map(barSignature),
  );
}

/** Bars that a piece keeps outside its line; beyond, the oldest give way. */
export const MOST_PARKED = 500;

/** As many parked bars as are kept, with the aims: those go that the composer wrote, then the oldest. */
export function parkedWithin(
  parked: readonly LineBar[],
  aims: readonly LessonAim[],
): Pick<LinePiece, 'parked' | 'aims'> {
  const over = parked.length - MOST_PARKED;
  if (over <= 0) return { parked, aims };
  const inTurn = [true, false].flatMap((written) =>
    parked.filter(({ origin, kept }) => (origin === 'composed' && !kept) === written),
  );
  const gone = new Set(inTurn.slice(0, over).map(({ id }) => id));
  return {
    parked: parked.filter(({ id }) => !gone.has(id)),
    aims: aims.filter(({ where }) => where.kind !== 'bar' || !gone.has(where.id)),
  };
}
