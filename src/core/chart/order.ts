import type { Chart, ChartBar } from './types';

/**
 * Indices into {@link Chart.bars} in the order they are played: repeats unfolded, each ending on its times
 * through. A repeat end without a beginning goes back to the end of the last repeat, or to the beginning of its
 * section. Every passage is played a counted number of times, so the order is finite for every chart.
 */
export function playOrder(chart: Chart): readonly number[] {
  const order: number[] = [];
  const starts = passageStarts(chart);
  let index = 0;
  let passage = 0;
  let time = 1;
  while (index < chart.bars.length) {
    const bar = chart.bars[index];
    if (!bar) break;
    if (index > passage && starts[index]) {
      passage = index;
      time = 1;
    }
    const played = bar.ending === null || bar.ending.includes(time);
    if (played) order.push(index);
    if (played && bar.repeatEnd !== null && time < bar.repeatEnd) {
      time += 1;
      index = passage;
    } else index += 1;
  }
  return order;
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
