import { barTicks, type Metre } from '../base';
import { type Chart, playOrder } from '../chart';
import type { LineSheet, SheetBar } from '../lesson';
import type { PerformanceOptions } from './options';

/** A bar of the performance with what the parts need to know about it. */
export interface PlannedBar {
  /** Index of the written bar; null for an empty bar between rounds. */
  readonly bar: number | null;
  readonly sheetBar: SheetBar | null;
  readonly metre: Metre;
  /** Ticks from the beginning of the performance. */
  readonly start: number;
  readonly duration: number;
  /** False while the student plays alone. */
  readonly bassPlays: boolean;
  /** What is no bar of the line: played before it, or the last hit after it. */
  readonly form?: 'intro' | 'ending';
}

/**
 * The written bars of a passage in the order they are played. Repeats inside the passage are unfolded; where a
 * repeat reaches beyond it, the passage is played up to the first time its last bar has been heard.
 */
function passageOrder(chart: Chart, passage: PerformanceOptions['passage']): readonly number[] {
  const order = playOrder(chart);
  if (passage === null) {
    return order;
  }
  const inside = (bar: number): boolean => {
    const number = chart.bars[bar]?.number ?? 0;
    return number >= passage.first && number <= passage.last;
  };
  const wanted = Math.max(...order.filter(inside));
  const played: number[] = [];
  for (const [position, bar] of order.entries()) {
    if (inside(bar)) {
      played.push(bar);
    }
    const next = order[position + 1];
    const leaves = next === undefined || !inside(next);
    if (leaves && played.includes(wanted)) {
      break;
    }
  }
  return played;
}

interface Turn {
  readonly bar: number | null;
  readonly bassPlays: boolean;
}

/** Bars by turns with and without the bass, in groups of `size`. */
function byTurns(order: readonly number[], size: number, between: readonly Turn[]): Turn[] {
  const turns: Turn[] = [];
  for (let from = 0; from < order.length; from += size) {
    const group = order.slice(from, from + size);
    for (const bassPlays of [true, false]) {
      turns.push(...group.map((bar) => ({ bar, bassPlays })), ...between);
    }
  }
  return turns;
}

function turnsOf(order: readonly number[], options: PerformanceOptions): readonly Turn[] {
  const empty: readonly Turn[] = options.emptyBar === true ? [{ bar: null, bassPlays: false }] : [];
  const plan = options.bass ?? { kind: 'every round' };
  switch (plan.kind) {
    case 'every round':
      return [...order.map((bar) => ({ bar, bassPlays: true })), ...empty];
    case 'every second round':
      return byTurns(order, order.length, empty);
    case 'call and response':
      return [...byTurns(order, Math.max(1, plan.bars), []), ...empty];
  }
}

/** A round from its played bar `from` on, which then begins where the round began. */
function fromBar(planned: readonly PlannedBar[], from: number): readonly PlannedBar[] {
  const begin = planned.filter(({ bar }) => bar !== null)[from];
  const skipped = begin === undefined ? 0 : begin.start - (planned[0]?.start ?? 0);
  return planned
    .slice(begin === undefined ? 0 : planned.indexOf(begin))
    .map((bar) => ({ ...bar, start: bar.start - skipped }));
}

/**
 * Every bar of one round, empty bars included, from the end of the count-in on. A pickup leads in once: where the bars are
 * played by turns it does not come again, so that the beat goes on.
 */
export function planBars(
  sheet: LineSheet,
  options: PerformanceOptions,
  countIn: number,
): readonly PlannedBar[] {
  const order = passageOrder(sheet.chart, options.passage).filter((bar) => sheet.bars[bar] !== undefined);
  const planned: PlannedBar[] = [];
  let start = countIn;
  let metre = sheet.metre;
  for (const turn of order.length === 0 ? [] : turnsOf(order, options)) {
    const sheetBar = turn.bar === null ? null : (sheet.bars[turn.bar] ?? null);
    const again = planned.length > 0 || options.pickup === false;
    if (again && sheetBar?.written.pickup === true && order.length > 1) continue;
    metre = sheetBar?.written.metre ?? metre;
    const duration = barTicks(metre);
    planned.push({ ...turn, sheetBar, metre, start, duration });
    start += duration;
  }
  return fromBar(planned, options.from ?? 0);
}
