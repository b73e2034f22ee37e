import { barTicks } from '../base';
import { jumpOf, type Navigation } from './navigation';
import type { Chart, ChartBar } from './types';

/**
 * Indices into {@link Chart.bars} in the order they are played: repeats unfolded, each ending on its times
 * through, jumps followed. A repeat end without a beginning goes back to the end of the last repeat, or to the
 * beginning of its section. Every passage is played a counted number of times and every jump is taken once, so the
 * order is finite for every chart.
 */
export const playOrder = (chart: Chart): readonly number[] => walk(chart).order;

/** By bar, which bars are played just before it and just after it, each once. */
export interface Neighbours {
  /** Null where the music begins. */
  readonly before: readonly (readonly (number | null)[])[];
  /** Null where the music ends. */
  readonly after: readonly (readonly (number | null)[])[];
}

/** The {@link Neighbours} of the bars of a chart that is played once. */
export function neighboursOf(chart: Chart): Neighbours {
  const before = chart.bars.map((): (number | null)[] => []);
  const after = chart.bars.map((): (number | null)[] => []);
  const follow = (bar: number | null, next: number | null): void => {
    if (bar !== null && !after[bar]?.includes(next)) after[bar]?.push(next);
    if (next !== null && !before[next]?.includes(bar)) before[next]?.push(bar);
  };
  const order = playOrder(chart);
  for (const [place, bar] of order.entries()) follow(order[place - 1] ?? null, bar);
  follow(order.at(-1) ?? null, null);
  return { before, after };
}

/** The way through a chart. */
export interface Way {
  readonly order: readonly number[];
  /** The signs that led it somewhere, by the index of their bar: `3 fine`. */
  readonly followed: ReadonlySet<string>;
  /** Bars to which a repeat goes back; a jump is no repeat. */
  readonly repeatedFrom: ReadonlySet<number>;
}

/**
 * For each bar, whether a sign of repeat belongs before it: it has one in the chart, or a repeat end goes back to it.
 * What goes back to the first bar needs none.
 */
export function repeatSigns(chart: Chart): readonly boolean[] {
  const { repeatedFrom } = walk(chart);
  return chart.bars.map(({ repeatStart }, index) => repeatStart || (index > 0 && repeatedFrom.has(index)));
}

/** What a sign of a bar is called in {@link Way.followed}. */
export const followedAs = (bar: number, sign: Navigation): string => `${bar} ${sign}`;

/**
 * Walks through a chart as it is played. After a jump repeats are not taken again and the last ending is played;
 * `to coda` and `fine` hold only then. A jump that names neither goes on to the coda where there is one, else to the
 * fine, else to the end (common practice, no source).
 */
export function walk(chart: Chart): Way {
  return new Walk(chart).way();
}

class Walk {
  private readonly order: number[] = [];
  private readonly followed = new Set<string>();
  private readonly repeatedFrom = new Set<number>();
  private readonly starts: readonly boolean[];
  private readonly times: readonly number[];
  private index = 0;
  private passage = 0;
  private time = 1;
  /** Where the music leaves after a jump. */
  private until: 'fine' | 'coda' | null = null;
  private repeats = true;

  constructor(private readonly chart: Chart) {
    this.starts = passageStarts(chart);
    this.times = passageTimes(chart, this.starts);
  }

  way(): Way {
    for (;;) {
      const bar = this.chart.bars[this.index];
      if (bar === undefined) break;
      if (this.index > this.passage && this.starts[this.index]) this.enter(this.index);
      const played = bar.ending === null || bar.ending.includes(this.time);
      if (played) this.order.push(this.index);
      if (!played) this.index += 1;
      else if (!this.goOn(bar)) break;
    }
    return { order: this.order, followed: this.followed, repeatedFrom: this.repeatedFrom };
  }

  private enter(passage: number): void {
    this.passage = passage;
    this.time = this.repeats ? 1 : (this.times[passage] ?? 1);
  }

  /** From a bar that has been played to the next; false where the music ends. */
  private goOn(bar: ChartBar): boolean {
    const here = this.index;
    const signs = bar.navigation ?? [];
    if (this.until === 'fine' && signs.includes('fine')) {
      this.followed.add(followedAs(here, 'fine'));
      return false;
    }
    const coda = this.until === 'coda' && signs.includes('to coda') ? codaAfter(this.chart, here) : null;
    if (coda !== null) {
      this.followed.add(followedAs(here, 'to coda')).add(followedAs(coda, 'coda'));
      this.until = null;
      this.repeats = true;
      this.land(coda);
      return true;
    }
    if (bar.repeatEnd !== null && this.time < bar.repeatEnd) {
      this.time += 1;
      this.index = this.target(this.passage);
      this.repeatedFrom.add(this.index);
      return true;
    }
    if (!this.jumps(bar, signs)) this.index += 1;
    return true;
  }

  private jumps(bar: ChartBar, signs: readonly Navigation[]): boolean {
    const jump = jumpOf(signs);
    const here = this.index;
    if (jump === null || this.followed.has(followedAs(here, jump.sign)) || !this.isLastTime(bar))
      return false;
    const to = jump.to === 'beginning' ? 0 : segnoBefore(this.chart, here);
    if (to === null) return false;
    this.followed.add(followedAs(here, jump.sign));
    if (jump.to === 'segno') this.followed.add(followedAs(to, 'segno'));
    this.until = jump.until ?? defaultUntil(this.chart);
    this.repeats = false;
    this.land(this.target(to));
    return true;
  }

  private isLastTime({ ending }: ChartBar): boolean {
    const times = this.times[this.passage] ?? 1;
    const last = ending === null ? times : Math.max(...ending.filter((time) => time <= times));
    return this.time >= last;
  }

  private land(index: number): void {
    let passage = index;
    while (passage > 0 && !this.starts[passage]) passage -= 1;
    this.enter(passage);
    this.index = index;
  }

  /** A pickup is heard again only where the bar before it lacks its beats. */
  private target(index: number): number {
    const bar = this.chart.bars[index];
    const before = this.chart.bars[this.index];
    const following = this.chart.bars[index + 1];
    if (!bar?.pickup || before === undefined || following === undefined) return index;
    const completes = barTicks(before.metre) + barTicks(bar.metre) === barTicks(following.metre);
    return completes ? index : index + 1;
  }
}

/** The bar where the coda begins, after a bar: its sign, else a section of that name. */
function codaAfter({ bars, sections }: Chart, index: number): number | null {
  const signed = bars.flatMap(({ navigation = [] }, bar) => (navigation.includes('coda') ? [bar] : []));
  const found = signed.find((bar) => bar > index) ?? signed[0];
  if (found !== undefined) return found;
  return sections.find(({ name, start }) => start > index && name?.toLowerCase() === 'coda')?.start ?? null;
}

/** The nearest segno up to a bar, else the first. */
function segnoBefore({ bars }: Chart, index: number): number | null {
  const signed = bars.flatMap(({ navigation = [] }, bar) => (navigation.includes('segno') ? [bar] : []));
  return signed.findLast((bar) => bar <= index) ?? signed[0] ?? null;
}

function defaultUntil({ bars }: Chart): 'fine' | 'coda' | null {
  const has = (sign: Navigation): boolean => bars.some(({ navigation = [] }) => navigation.includes(sign));
  return has('to coda') ? 'coda' : has('fine') ? 'fine' : null;
}

/** For each bar that a passage begins with, how often the passage is played in all; 1 for the others. */
function passageTimes({ bars }: Chart, starts: readonly boolean[]): readonly number[] {
  const times: number[] = bars.map(() => 1);
  let passage = 0;
  for (const [index, bar] of bars.entries()) {
    if (starts[index]) passage = index;
    times[passage] = Math.max(times[passage] ?? 1, bar.repeatEnd ?? 1);
  }
  return times;
}

/**
 * For each bar, whether a repeat end behind it can go back no further than to it: it opens a repeat, comes after
 * a finished one, or begins a section outside a repeat opened by its sign.
 */
export function passageStarts(chart: Chart): readonly boolean[] {
  const sections = new Set(chart.sections.map((section) => section.start));
  let openedBySign = false;
  return chart.bars.map((bar, index) => {
    const before = chart.bars[index - 1];
    const finished = before !== undefined && endsPassage(before, bar);
    if (finished) openedBySign = false;
    const starts = bar.repeatStart || finished || (!openedBySign && sections.has(index));
    if (bar.repeatStart) openedBySign = true;
    return starts;
  });
}

/** Nothing after `bar` belongs to its repeat: the repeat is over, or the last of its endings. */
const endsPassage = (bar: ChartBar, next: ChartBar): boolean =>
  bar.ending === null ? bar.repeatEnd !== null : next.ending === null;
