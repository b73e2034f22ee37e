import { expect, test } from 'vitest';
import { barTicks, metreName } from '../../src/core/base';
import { countedIn, parseChart, writtenMetres } from '../../src/core/chart';

/** Of each bar: the metre that is written, and the beats of the whole bar before it. */
function written(text: string): readonly string[] {
  const { chart } = parseChart(text, { count: 4, unit: 4 });
  return writtenMetres(chart).map(({ metre, from }) => `${metreName(metre)} from ${from / 960}`);
}

const FULL = '4/4 from 0';

test.each([
  { name: 'a pickup has the end of a bar', chart: '(1) | G | C | F |', bars: ['4/4 from 3', FULL, FULL] },
  {
    name: 'a pickup has the end of a bar in the metre that it leads into',
    chart: '(3/4) (1) | G |\n|: C | F | G | C :|',
    bars: ['3/4 from 2', ...new Array(4).fill('3/4 from 0')],
  },
  {
    name: 'the last bar is what the pickup lacks',
    chart: '(1) | G | C | (3/4) C |',
    bars: ['4/4 from 3', FULL, FULL],
  },
  {
    name: 'so is the end of a repeat that goes back to the pickup',
    chart: '(1) |: G | C | (3/4) C :|',
    bars: ['4/4 from 3', FULL, FULL],
  },
  {
    name: 'a section with a pickup, written again by its name',
    chart: 'Verse:\n(1) | G | C | (3/4) C |\nVerse',
    bars: ['4/4 from 3', FULL, FULL, '4/4 from 3', FULL, FULL],
  },
  {
    name: 'two halves of a bar that a section divides',
    chart: 'A:\n| C | F | (2/4) G |\nB:\n| (2/4) G | (4/4) C |',
    bars: [FULL, FULL, FULL, '4/4 from 2', FULL],
  },
  {
    name: 'a short bar that nothing completes changes the metre',
    chart: '| C | (2/4) G | (4/4) C | F |',
    bars: [FULL, '2/4 from 0', FULL, FULL],
  },
  {
    name: 'so do two of them that no sign divides',
    chart: '| C | (2/4) G | (2/4) G | (4/4) C |',
    bars: [FULL, '2/4 from 0', '2/4 from 0', FULL],
  },
  {
    name: 'and one that is completed once and not each time',
    chart: '(1) | G |: C | (3/4) C :| (4/4) F | F |',
    bars: ['4/4 from 3', FULL, '3/4 from 0', FULL, FULL],
  },
  {
    name: 'a pickup that is heard again after whole bars is more than their metre',
    chart: 'Verse:\n(1) | G | C | C |\nVerse',
    bars: ['4/4 from 3', FULL, FULL, '1/4 from 0', FULL, FULL],
  },
])('$name', ({ chart, bars }) => {
  expect(written(chart)).toEqual(bars);
});

test('what is played before and after a part adds up to a whole bar', () => {
  const { chart } = parseChart('(2) |: G | C | (2/4) C :|', { count: 4, unit: 4 });
  const metres = writtenMetres(chart);
  const [pickup, last] = [chart.bars[0], chart.bars.at(-1)];
  if (pickup === undefined || last === undefined) throw new Error('there are bars');
  expect(barTicks(pickup.metre) + barTicks(last.metre)).toBe(barTicks(metres[0]?.metre ?? last.metre));
  expect(metres.map(({ from }) => from)).toEqual([1920, 0, 0]);
});

test('a moment of a part is counted in the whole bar, and behind the chart in the metre that is told', () => {
  const { chart } = parseChart('(2) |: G | C | (2/4) C :|', { count: 4, unit: 4 });
  expect([0, 1, 3, 4].map((bar) => countedIn(chart, bar, { count: 3, unit: 4 })(1440))).toEqual([
    'the & of 4',
    'the & of 2',
    'the & of 2',
    'the & of 2',
  ]);
});

test('the metres of a chart are worked out once', () => {
  const { chart } = parseChart('(2) |: G | C | (2/4) C :|', { count: 4, unit: 4 });
  expect(writtenMetres(chart)).toBe(writtenMetres(chart));
});
