import { expect, test } from 'vitest';
import { beatWords, lengthWords } from '../../src/core/base';
import { describeBar } from '../../src/core/lesson';
import { sheetOf } from '../support/score-sheets';

const sheet = sheetOf({
  key: 'G',
  chart: '| G | C |',
  notes: 'G1/1{hammer} A1/1>{palm_mute} B1/2{slide} | C2/4{fermata}',
  over: { 0: { words: 'dig in', dynamics: [{ at: 0, level: 'p', hairpin: 'crescendo' }] } },
});

test('a bar says its dynamics, its word and how its notes are played', () => {
  const [first, second] = sheet.bars.map((bar) => describeBar(sheet, bar));
  expect(first).toMatch(/^Over the bar: dig in\. p on 1, growing\. R on 1, .*, hammer-on;/);
  expect(first).toContain('accent, palm mute');
  expect(first).toContain('slide to the next note');
  expect(second).toMatch(/, fermata\.$/);
});

test('a bar says name, length, place and finger of every note, every rest, and where its chords come', () => {
  const read = sheetOf({ key: 'F', chart: '| Gm C7 | F |', notes: 'G1/1.5 r/.5 C2/1 r/1 | F1/2.5~ r/1.5' });
  expect(read.bars.map((bar) => describeBar(read, bar))).toEqual([
    'Gm on 1, C7 on 3. R on 1, G, dotted quarter, E string fret 3, finger 3; rest on the & of 2, eighth; R on 3, C, quarter, A string fret 3, finger 3; rest on 4, quarter.',
    'R on 1, F, half and eighth, E string fret 1, finger 1; rest on the & of 3, dotted quarter.',
  ]);
});

test('a pickup is counted as the end of a whole bar, as the numbers under its notes are', () => {
  const read = sheetOf({ key: 'F', chart: '(2) C7 | F | F |', notes: 'C2/1 r/.5 E2/.5 | F1/4 | F1/4' });
  expect(read.bars.slice(0, 2).map((bar) => describeBar(read, bar))).toEqual([
    expect.stringMatching(/^R on 3, C, quarter, .*; rest on 4, eighth; 3 on the & of 4, E, eighth, /),
    expect.stringMatching(/^R on 1, F, whole, /),
  ]);
});

test('lengths have the trade’s names, also in triplets and where two are tied', () => {
  expect([3840, 2880, 640, 320, 240, 1200, 1920 + 320].map(lengthWords)).toEqual([
    'whole',
    'dotted half',
    'triplet quarter',
    'triplet eighth',
    'sixteenth',
    'quarter and sixteenth',
    'half and triplet eighth',
  ]);
});

test('a note that goes on from the bar before says so, and an empty bar that it is empty', () => {
  const { bars } = sheetOf({ key: 'C', chart: '| C | F | G |', notes: 'C2/4~ | C2/1 r/3 | r/4' });
  const [, second, third] = bars.map((bar) => describeBar({ ...sheet, bars }, bar, { rests: true }));
  expect(second).toMatch(/^held on, 5 on 1, C, quarter, .*; rest on 2, dotted half\.$/);
  expect(third).toBe('The bass rests for the whole bar.');
});

test('a bar without a chord rests in a line that is written, and waits with the others in one that is not', () => {
  const said = (notes: string) => {
    const read = sheetOf({ key: 'C', chart: '| C | N.C. | F |', notes });
    return read.bars.slice(1).map((bar) => describeBar(read, bar));
  };
  expect(said('C2/4 | r/4 | r/4')).toEqual(['The bass rests for the whole bar.', 'No notes yet.']);
  expect(said('r/4 | r/4 | r/4')).toEqual(['No notes yet.', 'No notes yet.']);
});

test('for the staff alone it says the pitch, and no string, fret or degree', () => {
  const [bar] = sheet.bars;
  const said = bar === undefined ? '' : describeBar(sheet, bar, { places: false });
  expect(said).toContain('G1 on 1, quarter, hammer-on; A1 on 2, quarter, accent, palm mute');
  expect(said).not.toMatch(/string|fret|finger|R,/);
});

test.each([
  ['2/4 of a beat after the second', 1440, { count: 4, unit: 4 }, 'the & of 2'],
  ['the last third of the first beat', 640, { count: 4, unit: 4 }, 'the last third of 1'],
  ['the third eighth of a dotted beat', 1440 + 960, { count: 6, unit: 8 }, 'the third eighth of 2'],
] as const)('%s is counted', (_, tick, metre, words) => {
  expect(beatWords(tick, metre)).toBe(words);
});

test('a line that is twice as long is told with twice the reading of its bars', () => {
  const readFor = (bars: number): number => {
    const line = sheetOf({
      key: 'C',
      chart: `| ${Array(bars).fill('C').join(' | ')} |`,
      notes: Array(bars).fill('C2/4').join(' | '),
    });
    let reads = 0;
    const counted = new Proxy(line.bars, {
      get(all, key, receiver) {
        reads += 1;
        return Reflect.get(all, key, receiver);
      },
    });
    const watched = { ...line, bars: counted };
    for (const bar of line.bars) describeBar(watched, bar);
    return reads;
  };
  expect(readFor(200) / readFor(100)).toBeLessThan(2.2);
});
