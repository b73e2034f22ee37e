import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BarEdit,
  barSignature,
  type Chart,
  type ChartBar,
  editBar,
  matchByCaret,
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

describe('a chart typed into anywhere', () => {
  it('has its bars followed in order, each by one of the same chords', () => {
    const put = fc.constantFrom('', ' ', '|', 'C', 'Am | ', '| F ', ':|', '\n', 'Verse', ';');
    fc.assert(
      fc.property(randomCharts, fc.nat(), fc.nat(8), put, (text, where, cut, inserted) => {
        const at = where % (text.length + 1);
        const typed = text.slice(0, at) + inserted + text.slice(at + cut);
        const [before, after] = [text, typed].map((each) => parseChart(each, metre()).chart);
        if (!before || !after) throw new Error('no chart was read');
        const matches = matchByCaret(
          { text, chart: before },
          { text: typed, chart: after },
          at + inserted.length,
        );
        expect(matches).toHaveLength(after.bars.length);
        const followed = matches.flatMap((old, now) => (old === null ? [] : [{ old, now }]));
        expect(followed.map(({ old }) => old)).toEqual(
          [...new Set(followed.map(({ old }) => old))].sort((one, other) => one - other),
        );
        const chords = (chart: Chart, index: number) => chart.bars.slice(index, index + 1).map(barSignature);
        for (const { old, now } of followed) expect(chords(after, now)).toEqual(chords(before, old));
      }),
      { seed: 20261129, numRuns: 300 },
    );
  }, 60_000);
});
