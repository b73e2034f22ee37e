import { describe, expect, it } from 'vitest';
import type { Metre } from '../../src/core/base';
import { type NotatedBar, notateBar } from '../../src/core/notation';

/** A bar in one line: `start+length` of every sound, in quarter notes. */
const sounds = (text: string) =>
  text
    .split(' ')
    .filter(Boolean)
    .map((part) => {
      const [start = 0, duration = 0] = part.split('+').map((number) => Math.round(Number(number) * 960));
      return { start, duration };
    });

/** `4` a quarter, `4.` dotted, `r8` a rest, `4~` tied on, `R` a whole bar's rest, `[8 8 8]` a triplet, `(8 8)` a beam. */
function show(bar: NotatedBar): string {
  const parts = bar.events.map((event) => {
    const sign = event.wholeBar ? 'R' : `${event.kind === 'rest' ? 'r' : ''}${event.value}`;
    return `${sign}${event.dots ? '.' : ''}${event.tied ? '~' : ''}`;
  });
  for (const { first, last } of bar.triplets) {
    parts[first] = `[${parts[first]}`;
    parts[last] = `${parts[last]}]`;
  }
  for (const group of bar.beams) {
    const [first = 0] = group;
    const last = group.at(-1) ?? 0;
    parts[first] = parts[first]?.startsWith('[') ? `[(${parts[first].slice(1)}` : `(${parts[first]}`;
    parts[last] = parts[last]?.endsWith(']') ? `${parts[last].slice(0, -1)})]` : `${parts[last]})`;
  }
  return parts.join(' ');
}

const metre = (text: string): Metre => {
  const [count, unit] = text.split('/').map(Number);
  return { count: count ?? 4, unit: unit === 8 ? 8 : unit === 2 ? 2 : 4 };
};

/** metre, sounds as start+length in quarters, and how the bar is written. */
const cases: readonly (readonly [string, string, string])[] = [
  ['4/4', '', 'R'],
  ['3/4', '', 'R'],
  ['6/8', '', 'R'],
  ['4/4', '0+4', '1'],
  ['4/4', '0+1 1+1 2+1 3+1', '4 4 4 4'],
  ['4/4', '0+2 2+2', '2 2'],
  ['4/4', '0+3 3+1', '2. 4'],
  ['4/4', '1+1 3+1', 'r4 4 r4 4'],
  ['4/4', '2+2', 'r2 2'],
  ['4/4', '0+2', '2 r2'],
  ['4/4', '0+1', '4 r4 r2'],
  ['4/4', '3+1', 'r2 r4 4'],
  ['4/4', '1+2 3+1', 'r4 2 4'],
  ['4/4', '1+3', 'r4 4~ 2'],
  ['4/4', '0+1.5 1.5+.5 2+1 3+1', '4. 8 4 4'],
  ['4/4', '0+.5 .5+1 1.5+.5 2+2', '8 4 8 2'],
  ['4/4', '0+.5 .5+1.5 2+2', '8 4. 2'],
  ['4/4', '0+1.5 1.5+2.5', '4. 8~ 2'],
  ['4/4', '1.5+1', 'r4 r8 8~ 8 r8 r4'],
  ['4/4', '.5+.5', 'r8 8 r4 r2'],
  ['4/4', '0+.5 .5+.5 1+.5 1.5+.5 2+.5 2.5+.5 3+.5 3.5+.5', '(8 8 8 8) (8 8 8 8)'],
  ['4/4', '0+1 1+.5 1.5+.5 2+.5 2.5+.5 3+1', '4 (8 8) (8 8) 4'],
  ['4/4', '.5+.5 1+.5 1.5+.5 2+2', 'r8 8 (8 8) 2'],
  ['4/4', '0+.25 .25+.25 .5+.25 .75+.25 1+.5 1.5+.5 2+2', '(16 16 16 16) (8 8) 2'],
  ['4/4', '0+.75 .75+.25 1+1 2+2', '(8. 16) 4 2'],
  ['4/4', '0+.25 .25+.5 .75+.25 1+1 2+2', '(16 8 16) 4 2'],
  ['4/4', '0+.25 .25+.75 1+1 2+2', '(16 8.) 4 2'],
  ['4/4', '.75+.5', 'r8 r16 16~ 16 r16 r8 r2'],
  ['4/4', '0+1.25', '4~ 16 r16 r8 r2'],
  ['4/4', '0+.3333333 .3333333+.3333333 .6666667+.3333333 1+1 2+2', '[(8 8 8)] 4 2'],
  ['4/4', '0+.6666667 .6666667+.3333333 1+1 2+2', '[4 8] 4 2'],
  ['4/4', '.3333333+.3333333 .6666667+.3333333 1+1 2+2', '[r8 (8 8)] 4 2'],
  ['4/4', '0+.6666667 .6666667+.6666667 1.3333333+.6666667 2+2', '[4 4 4] 2'],
  ['4/4', '0+1.3333333 2+2', '[2 r4] 2'],
  ['4/4', '0+1.3333333 1.3333333+1.3333334 2.6666667+1.3333333', '[2 4~] [4 2]'],
  ['3/4', '0+3', '2.'],
  ['3/4', '0+2', '2 r4'],
  ['3/4', '1+2', 'r4 2'],
  ['3/4', '0+1', '4 r4 r4'],
  ['3/4', '2+1', 'r4 r4 4'],
  ['3/4', '0+1.5 1.5+1.5', '4. 8~ 4'],
  ['3/4', '0+2.5', '2~ 8 r8'],
  ['3/4', '0+.5 .5+.5 1+.5 1.5+.5 2+.5 2.5+.5', '(8 8) (8 8) (8 8)'],
  ['2/4', '0+.5 .5+.5 1+.5 1.5+.5', '(8 8 8 8)'],
  ['2/2', '0+2 2+2', '2 2'],
  ['2/2', '0+1 1+3', '4 2.'],
  ['2/2', '0+.5 .5+.5 1+.5 1.5+.5 2+2', '(8 8 8 8) 2'],
  ['6/8', '0+3', '2.'],
  ['6/8', '0+1.5 1.5+1.5', '4. 4.'],
  ['6/8', '0+1 1+.5 1.5+.5 2+.5 2.5+.5', '4 8 (8 8 8)'],
  ['6/8', '0+.5 .5+1 1.5+1.5', '8 4 4.'],
  ['6/8', '1.5+1.5', 'r4. 4.'],
  ['6/8', '1+.5 1.5+1.5', 'r4 8 4.'],
  ['6/8', '0+.5 1.5+.5', '8 r8 r8 8 r8 r8'],
  ['6/8', '0+.75 .75+.25 1+.5 1.5+1.5', '(8. 16 8) 4.'],
  ['6/8', '1+1', 'r4 8~ 8 r8 r8'],
  ['12/8', '0+6', '1.'],
  ['12/8', '0+3 3+3', '2. 2.'],
  ['12/8', '0+1.5', '4. r4. r4. r4.'],
  ['12/8', '0+1 1+.5 1.5+1 2.5+.5 3+1.5 4.5+1 5.5+.5', '4 8 4 8 4. 4 8'],
  ['9/8', '0+4.5', '2.~ 4.'],
  ['5/4', '0+5', '2.~ 2'],
  ['5/4', '3+2', 'r4 r4 r4 2'],
  ['5/4', '0+3 3+2', '2. 2'],
  ['5/4', '2+2', 'r4 r4 4~ 4 r4'],
  ['5/4', '0+.5 .5+.5 1+.5 1.5+.5 2+1 3+.5 3.5+.5 4+1', '(8 8) (8 8) 4 (8 8) 4'],
  ['2/4', '', 'R'],
  ['2/4', '1+1', 'r4 4'],
  ['2/4', '0+1.5 1.5+.5', '4. 8'],
  ['2/4', '0+.5 .5+.5 1+1', '(8 8) 4'],
  ['7/8', '', 'R'],
  ['7/8', '0+1 1+1 2+1.5', '4 4 4.'],
  ['7/8', '0+.5 .5+.5 1+.5 1.5+.5 2+.5 2.5+.5 3+.5', '(8 8) (8 8) (8 8 8)'],
  ['7/8', '2+1.5', 'r4 r4 4.'],
  ['7/8', '0+1', '4 r4 r4.'],
  ['7/8', '0+1 2+.5', '4 r4 8 r8 r8'],
  ['7/8', '0+3.5', '2~ 4.'],
  ['7/8', '1.5+1', 'r4 r8 8~ 8 r8 r8'],
  ['7/8', '0+1 1+1 2+1 3+.5', '4 4 4 8'],
  ['9/8', '0+1.5 1.5+1.5 3+1.5', '4. 4. 4.'],
  ['9/8', '0+1.5', '4. r4. r4.'],
  ['9/8', '3+.5 3.5+.5 4+.5', 'r4. r4. (8 8 8)'],
];

/**
 * How a bar is written: no beam across the middle of 4/4, eighths in fours within a half, sixteenths by the beat
 * (musicengravingtips.com, 2020/01/20); rests that show each beat, an empty beat one as a quarter or an eighth rest,
 * dotted rests for whole beats of compound time: common practice, no source. In 7/8 the groups of two, two and three show
 * in beams and rests, in 5/4 three and two (common practice, no source).
 */
describe('writing a bar', () => {
  it.each(cases)('%s with %s is written %s', (time, line, written) => {
    expect(show(notateBar(sounds(line), metre(time)))).toBe(written);
  });
});
