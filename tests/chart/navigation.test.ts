import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editBar, parseChart, playOrder, printChart } from '../../src/core/chart';

const METRE = { count: 4, unit: 4 } as const;
const read = (text: string) => parseChart(text, METRE);
/** The bars as they are played, by the numbers they are written with. */
const played = (text: string): string => {
  const { chart } = read(text);
  return playOrder(chart)
    .map((index) => chart.bars[index]?.number)
    .join(' ');
};
const problems = (text: string): readonly string[] => read(text).problems.map(({ message }) => message);

// How the signs are followed, that repeats are not taken again after a jump, and that a jump without more goes to the
// coda or the fine: common practice, no source.
describe('the way through a chart', () => {
  it.each([
    ['| C | F (fine) | G | C (D.C. al fine) |', '1 2 3 4 1 2'],
    ['| C | (segno) F | G (fine) | Am (D.S. al fine) |', '1 2 3 4 2 3'],
    ['| C | (segno) F | G (to coda) | Am (D.S. al coda) | (coda) C |', '1 2 3 4 2 3 5'],
    ['| C (to coda) | F | (D.C. al coda)\n(coda)\n| G | C |', '1 2 1 3 4'],
    ['| C (to coda) | F (D.C.) |\nCoda:\n| G | C |', '1 2 1 3 4'],
    ['| C | F (fine) | G (DC) |', '1 2 3 1 2'],
    ['| C | F (D.C.) |', '1 2 1 2'],
    ['|: C |1. F :|2. G | Am (fine) || Dm | E (da capo al fine) |', '1 2 1 3 4 5 6 1 3 4'],
    ['|: C | F :| x3 G (D.C.) |', '1 2 1 2 1 2 3 1 2 3'],
    ['| (segno) C |: F :| G (to coda) | Am (d.s. al coda) | (coda) |: C :|', '1 2 2 3 4 1 2 3 5 5'],
    ['|: C |1. F :|2. G :|3. Am |', '1 2 1 3 1 4'],
  ])('%j is played %s', (text, order) => {
    expect(played(text)).toBe(order);
    expect(problems(text)).toEqual([]);
  });

  it('does not hear a pickup again where the bar before it is whole', () => {
    expect(played('|: (1) G7 | C | F | C :|')).toBe('0 1 2 3 1 2 3');
    expect(played('|: (1) G7 | C | F | (3/4) C :|')).toBe('0 1 2 3 0 1 2 3');
    expect(played('(1) G7 | C | F (D.C.) |')).toBe('0 1 2 1 2');
  });

  it.each([
    ['|: C | F |1. G :|3. C |', /^Bar 4 is never played: no time through leads to ending 3/],
    ['|: C |1. F :|1. G | Am |', /^Bar 3 is never played: its ending has no turn/],
    ['|: C |1. F :| x4 2. G |', /played 4 times, but its endings are numbered up to 2/],
    ['| (segno) C (fine) | F (D.S. al fine) | G | Am |', /^Bars 3 to 4 are never played/],
    ['| (segno) C | F (D.S. al fine) | G | Am |', /no bar has a fine/],
    ['| C | F (D.C. al coda) | G | Am |', /no bar leaves for a coda/],
    ['| C | F (D.S.) |', /no bar has one: write \(segno\)/],
    ['| (segno) C | F |', /Nothing goes back to this sign/],
    ['| (coda) C | F |', /Nothing leads to this coda/],
    ['| C (to coda) | (coda) F |', /holds after \(D.C. al coda\)/],
    ['| C (to coda) | F (D.C. al coda) | G |', /never leaves for the coda/],
    ['| C (fine) | F |', /never ends here/],
    ['| C | F |\n(segno)', /no bar follows/],
  ])('%j is not taken without a word', (text, message) => {
    expect(problems(text).some((each) => message.test(each))).toBe(true);
  });

  it('is printed as it is read', () => {
    const signs = fc.constantFrom('(segno)', '(coda)', '', '', '');
    const ends = fc.constantFrom(
      '(to coda)',
      '(fine)',
      '(D.C. al fine)',
      '(D.S. al coda)',
      '(D.S.)',
      '',
      '',
      '',
    );
    const bar = fc.tuple(signs, fc.constantFrom('C', 'F G', 'Am7'), ends).map((parts) => parts.join(' '));
    fc.assert(
      fc.property(fc.array(bar, { minLength: 1, maxLength: 8 }), (bars) => {
        const { chart } = read(`| ${bars.join(' | ')} |`);
        const again = read(printChart(chart)).chart;
        const told = (each: typeof chart) => each.bars.map(({ place: _, ...rest }) => rest);
        expect(told(again)).toEqual(told(chart));
        expect(playOrder(again)).toEqual(playOrder(chart));
        // Every jump is taken once at most.
        expect(playOrder(chart).length).toBeLessThanOrEqual(chart.bars.length * (bars.length + 1));
      }),
      { seed: 17, numRuns: 200 },
    );
  });

  it('stays when a bar is taken out', () => {
    const text = '| C | F | G (fine) | Am | C (D.C. al fine) |';
    expect(editBar(text, METRE, { kind: 'remove', bar: 4 })?.text).toBe(
      '| C | F | G (fine) | Am (D.C. al fine) |',
    );
    expect(editBar(text, METRE, { kind: 'remove', bar: 2 })?.text).toBe(
      '| C | F (fine) | Am | C (D.C. al fine) |',
    );
  });
});
