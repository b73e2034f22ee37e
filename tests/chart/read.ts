import type { Metre } from '../../src/core/base';
import { ticks } from '../../src/core/base';
import { barSignature, type Chart, parseChart, playOrder } from '../../src/core/chart';

export const metre = (text = '4/4'): Metre => {
  const [count, unit] = text.split('/').map(Number);
  if (count === undefined || (unit !== 2 && unit !== 4 && unit !== 8)) throw new Error(`no metre: ${text}`);
  return { count, unit };
};

export const read = (text: string, where = '4/4') => parseChart(text, metre(where));

/** The chart of a text that must be free of problems. */
export function chart(text: string, where = '4/4'): Chart {
  const parsed = read(text, where);
  if (parsed.problems.length > 0) throw new Error(`${text}: ${JSON.stringify(parsed.problems)}`);
  return parsed.chart;
}

/** The harmony of every bar in quarters: `C2 G2 | Am4`. */
export const harmony = (read: Chart): string =>
  read.bars
    .map((bar) =>
      barSignature(bar)
        .split(' ')
        .map((span) => span.replace(/@(\d+)$/, (_, length: string) => `·${Number(length) / ticks(960)}`))
        .join(' '),
    )
    .join(' | ');

/** The bars as played, by their written numbers. */
export const played = (read: Chart): string =>
  playOrder(read)
    .map((index) => read.bars[index]?.number)
    .join(' ');

/** The chart without the places in its text. */
export const withoutPlaces = (read: Chart) => ({
  ...read,
  bars: read.bars.map(({ place, ...bar }) => bar),
});
