import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BarEdit,
  barSignature,
  type Chart,
  type ChartBar,
  editBar,
  parseChart,
  playOrder,
  usesOf,
} from '../../src/core/chart';
import { randomCharts } from './random-charts';
import { metre } from './read';

const comments = (text: string) => text.split('\n').flatMap((line) => line.match(/;.*$/) ?? []);
/** What stands in a bar, however it was typed; without its chords where they were written over. */
const content = (bar: ChartBar, writtenOver: boolean) => ({
  chords: writtenOver ? '' : barSignature(bar),
  metre: bar.metre,
  key: bar.key,
  pickup: bar.pickup,
});
/** Two blanks between words, blanks at a line's end, two empty lines, a line of a bar line only. */
const UNTIDY = [/\S {2,}(?=[^\s;])/, /[^\S\n]+$/m, /\n{3,}/, /^\|\s*$/m];
/** Problems that the typed chords may have of their own. */
const TYPED = /no bar before|no chord stands|too many for a bar/;
const edits = fc.constantFrom<BarEdit['kind']>('write', 'insert', 'append', 'remove');
const typed = fc.constantFrom('Em', 'Em A', '%', 'F#m7b5', 'N.C.');

/** Whether a bar can be changed in its own text. */
const isWritten = (chart: Chart, bar: number, kind: BarEdit['kind']) =>
  chart.sections[chart.bars[bar]?.section ?? 0]?.again === false &&
  !(kind === 'insert' && chart.bars[bar]?.pickup === true);

/** Looks at an edit from all sides. */
function expectOneChange(text: string, chart: Chart, edit: BarEdit): void {
  const edited = editBar(text, metre(), edit);
  if (edited === null) throw new Error('the edit was refused');
  const after = parseChart(edited.text, metre());
  expect(after.problems.filter(({ message }) => !TYPED.test(message))).toEqual([]);
  expect(comments(edited.text)).toEqual(comments(text));

  const isNew = edit.kind === 'insert' || edit.kind === 'append';
  const touched = new Set(isNew ? [] : usesOf(chart, edit.bar));
  const kept = chart.bars.flatMap((_, index) =>
    edit.kind === 'remove' && touched.has(index) ? [] : [index],
  );
  expect(edited.origins.filter((origin) => origin !== null)).toEqual(kept);
  expect(after.chart.bars).toHaveLength(edited.origins.length);
  for (const [index, origin] of edited.origins.entries()) {
    const [old, now] = [chart.bars[origin ?? -1], after.chart.bars[index]];
    const over = touched.has(origin ?? -1);
    if (old && now) expect(content(now, over)).toEqual(content(old, over));
  }
  const order = playOrder(after.chart).flatMap((index) => edited.origins[index] ?? []);
  if (edit.kind !== 'remove' || chart.bars[edit.bar]?.ending === null)
    expect(order).toEqual(playOrder(chart).filter((index) => kept.includes(index)));
  for (const mark of UNTIDY) if (!mark.test(text)) expect(edited.text).not.toMatch(mark);
}

describe('a bar edited anywhere in any chart', () => {
  it('leaves every other bar, every comment and the way of playing as they were', () => {
    fc.assert(
      fc.property(randomCharts, edits, fc.nat(), typed, (text, kind, where, words) => {
        const { chart, problems } = parseChart(text, metre());
        const bar = where % chart.bars.length;
        fc.pre(problems.length === 0 && isWritten(chart, bar, kind));
        expectOneChange(text, chart, kind === 'remove' ? { kind, bar } : { kind, bar, text: words });
      }),
      { seed: 20261127, numRuns: 400 },
    );
  }, 60_000);
});
