import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { breakLines, TIGHTEST } from '../../src/score/layout/breaks';
import {
  type BarSpacing,
  type Column,
  factorFor,
  gapsOf,
  placeColumns,
  widthAt,
} from '../../src/score/layout/spacing';
import type { Position, ScoreOptions } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { NOTES_ONLY } from '../support/score-sheets';

const head = (tick: number, extra: Partial<Column> = {}): Column => ({ tick, left: 6, right: 6, ...extra });

/** Distances from each column to the next, the last to the bar line left out. */
function distances(
  columns: readonly Column[],
  length: number,
  factor: number,
  texts: Parameters<typeof gapsOf>[2] = [],
) {
  const gaps = gapsOf(columns, length, texts);
  const { xs } = placeColumns({ before: 0, after: 0, columns, gaps }, factor);
  return xs.slice(1).map((x, index) => x - (xs[index] ?? 0));
}

const at = (...ticks: number[]) => ticks.map((tick) => head(tick));

describe('space follows time', () => {
  // T. Ross, "The Art of Music Engraving and Processing" (1970), from memory: each value stands about 1.4 times as wide
  // as the one half as long; engravers' tables lie between 1.4 and 1.6.
  test.each([0.95, 1, 1.2, 1.5, 2])(
    'quarter to eighth and eighth to sixteenth are 1.4 to 1.6, stretched by %f',
    (factor) => {
      const [quarter = 0, eighth = 0, , sixteenth = 0] = distances(
        at(0, 960, 1440, 1920, 2160, 2400),
        3840,
        factor,
      );
      expect(quarter / eighth).toBeGreaterThanOrEqual(1.4);
      expect(quarter / eighth).toBeLessThanOrEqual(1.6);
      expect(eighth / sixteenth).toBeGreaterThanOrEqual(1.4);
      expect(eighth / sixteenth).toBeLessThanOrEqual(1.6);
    },
  );

  test('ink that asks for more than its time widens its whole bar, and no neighbour', () => {
    const flagged = { right: 14.5 };
    for (const wide of [flagged, { left: 22 }, { right: 30 }]) {
      const columns = [head(0), head(960, wide), head(1440, wide), head(1920), head(2160), head(2400)];
      const [quarter = 0, eighth = 0, other = 0, sixteenth = 0] = distances(columns, 3840, 1);
      for (const ratio of [quarter / eighth, quarter / other, other / sixteenth]) {
        expect(ratio).toBeGreaterThanOrEqual(1.4);
        expect(ratio).toBeLessThanOrEqual(1.6);
      }
    }
    expect(distances(at(0, 960, 1920), 3840, 1)[0]).toBeCloseTo(31, 1);
  });

  test('a full line gives way: there the bar is as narrow as its time, but for the gap that needs more', () => {
    const columns = [head(0), head(960), head(1440, { left: 30 }), head(1920)];
    const [loose = 0] = distances(columns, 3840, 0.9);
    const [quarter = 0, eighth = 0, other = 0] = distances(columns, 3840, 0.84);
    expect(loose).toBeGreaterThan(50);
    expect(quarter).toBeCloseTo(31 * 0.84, 1);
    expect(other).toBeCloseTo((31 / 1.45) * 0.84, 1);
    expect(eighth).toBeCloseTo(40, 1);
  });

  test('an accidental before an eighth does not make it wider than a quarter', () => {
    const columns = [head(0), head(960), head(1440, { left: 22 }), head(1920)];
    const [quarter = 0, eighth = 0] = distances(columns, 3840, 1.3);
    expect(eighth).toBeLessThan(quarter);
  });

  test('a long chord symbol does not pull equal notes apart', () => {
    const four = distances(at(0, 960, 1920, 2880), 3840, 1, [{ from: 0, to: 2, width: 140 }]);
    for (const distance of four) expect(distance).toBeCloseTo(four[0] ?? 0, 1);
    const [first = 0, second = 0] = distances(at(0, 960, 1920, 2880), 3840, 1, [
      { from: 0, to: 2, width: 140 },
    ]);
    expect(first + second).toBeGreaterThanOrEqual(139);
  });

  /*
   * As they are printed: in large print, and where a line is as narrow as NOTES_ONLY's, systems are full of signs before
   * sixteenths and give way rather than hold two bars; those bars are named, and there are no others.
   */
  describe('in every bar of the golden scores notes twice as long stand 1.4 to 1.6 as wide', () => {
    const POINTS = 72 / 25.4;
    const sizes = { chord: 13, tab: 10, degree: 10, finger: 9, counting: 10, section: 11, small: 10 };
    const paper: ScoreOptions = {
      ...NOTES_ONLY,
      fingers: true,
      width: 180 * POINTS,
      staffSpace: 1.75 * POINTS,
      measureNumbers: true,
      textSizes: sizes,
    };
    const larger = 16 / 11;
    const large: ScoreOptions = {
      ...paper,
      staffSpace: 1.75 * POINTS * larger,
      textSizes: {
        chord: 13 * larger,
        tab: 16,
        degree: 16,
        finger: 16,
        counting: 16,
        section: 16,
        small: 16,
      },
    };
    const ratiosIn = (options: ScoreOptions) =>
      Object.entries(SCORE_FIXTURES).flatMap(([name, make]) =>
        engrave(make(), options).systems.flatMap(({ bars }) =>
          bars.flatMap(({ bar, positions }) =>
            ratiosOf(positions).map((ratio) => ({ ...ratio, of: `${name} ${bar}` })),
          ),
        ),
      );
    const FULL = /^(signs-before-sixteenths \d|ties 1)$/;

    test.each([
      ['on paper', paper, false],
      ['on paper with degrees and counting', { ...paper, degrees: true, counting: true }, false],
      ['on a tab alone', { ...paper, parts: 'tab', counting: true }, false],
      ['in large print', large, true],
      ['in a narrow line', NOTES_ONLY, true],
    ] as const)('%s', (_, options, isFull) => {
      const ratios = ratiosIn(options);
      expect(ratios.filter(({ long }) => long === 960).length).toBeGreaterThan(100);
      expect(ratios.filter(({ long }) => long === 480).length).toBeGreaterThan(30);
      const astray = ratios.filter(({ least, most }) => least < 1.4 || most > 1.6).map(({ of }) => of);
      expect(astray.filter((of) => !(isFull && FULL.test(of)))).toEqual([]);
    });
  });
});

/** The least and the greatest ratio of a bar's quarters to its eighths, and of its eighths to its sixteenths. */
function ratiosOf(positions: readonly Position[]) {
  const gaps = positions.slice(0, -2).map(({ tick, x }, index) => {
    const next = positions[index + 1];
    return { ticks: (next?.tick ?? 0) - tick, width: (next?.x ?? 0) - x };
  });
  const widths = (ticks: number) => gaps.filter((gap) => gap.ticks === ticks).map(({ width }) => width);
  return [960, 480].flatMap((long) => {
    const [wide, narrow] = [widths(long), widths(long / 2)];
    if (wide.length === 0 || narrow.length === 0) return [];
    return [
      { long, least: Math.min(...wide) / Math.max(...narrow), most: Math.max(...wide) / Math.min(...narrow) },
    ];
  });
}

describe('systems', () => {
  const plain = (count: number) =>
    Array.from({ length: count }, () => ({ startsSection: false, pickup: false }));
  const counts = (bars: number, usual: number, widths: (bar: number) => number) =>
    breakLines(plain(bars), { usual, strictly: false, tightest: TIGHTEST }, (first, end) => {
      let sum = 0;
      for (let bar = first; bar < end; bar += 1) sum += widths(bar);
      return { factor: 4 / sum };
    }).map(({ first, end }) => end - first);

  test('keep phrases of four together', () => {
    expect(counts(8, 4, () => 1)).toEqual([4, 4]);
    expect(counts(12, 4, () => 1)).toEqual([4, 4, 4]);
    expect(counts(16, 4, () => 0.7)).toEqual([4, 4, 4, 4]);
  });

  test('leave no bar or two alone where another break avoids it', () => {
    expect(counts(5, 4, () => 0.8)).toEqual([5]);
    expect(counts(6, 4, () => 1)).toEqual([3, 3]);
    expect(counts(9, 4, () => 1)).toEqual([3, 3, 3]);
    expect(counts(10, 4, () => 1)).not.toContain(2);
  });

  test('stand no shorter one before longer ones where another break has what is left over at the end', () => {
    const threes = (bars: number, first = 3) =>
      breakLines(plain(bars), { usual: 4, strictly: false, tightest: TIGHTEST }, (from, end) => ({
        factor: (from === 0 ? first : 3) / (end - from),
      })).map((each) => each.end - each.first);
    expect(threes(8)).toEqual([3, 3, 2]);
    // The first system has clef, key and metre: looser systems at its cost are not worth a short one.
    expect(threes(8, 2.7)).toEqual([3, 3, 2]);
    // Three bars have no room there.
    expect(threes(8, 2.4)).toEqual([2, 3, 3]);
    const twos = (bars: number) => counts(bars, 4, (bar) => (bar === 6 ? 1 : 2));
    expect(twos(8)).toEqual([2, 2, 2, 2]);
  });

  describe('where short sections are joined', () => {
    const sections = (lengths: readonly number[], width: number, coda = Number.NaN) => {
      const bars = lengths.flatMap((length, section) =>
        Array.from({ length }, (_, bar) => ({
          startsSection: bar === 0 && section > 0,
          pickup: false,
          waySigns: bar === 0 && section === coda ? (['coda'] as const) : [],
        })),
      );
      const fullness = { usual: 4, strictly: false, tightest: TIGHTEST, joined: true };
      return breakLines(bars, fullness, (first, end) => ({ factor: 4 / ((end - first) * width) })).map(
        ({ first, end }) => end - first,
      );
    };

    test('one or two bars share a system with a whole phrase behind them, or before them at the end', () => {
      expect(sections([2, 8], 0.7)).toEqual([6, 4]);
      expect(sections([1, 8], 0.7)).toEqual([5, 4]);
      expect(sections([8, 2], 0.7)).toEqual([4, 6]);
      expect(sections([1, 4, 1], 0.7)).toEqual([6]);
    });

    test('they stand alone where no whole phrase has room beside them', () => {
      expect(sections([2, 8], 1)).toEqual([2, 4, 4]);
      expect(sections([8, 2], 1)).toEqual([4, 4, 2]);
    });

    test('longer sections each begin a system, and the coda does whatever its length', () => {
      expect(sections([3, 8], 0.6)).toEqual([3, 4, 4]);
      expect(sections([8, 2], 0.7, 1)).toEqual([4, 4, 2]);
    });
  });

  test('hold fewer bars where their music is dense', () => {
    expect(Math.max(...counts(8, 4, () => 1.5))).toBeLessThanOrEqual(3);
    expect(counts(4, 4, () => 6)).toEqual([1, 1, 1, 1]);
  });

  test('hold fewer bars where otherwise space would not follow time, but not two for that', () => {
    const uneven = (most: number) =>
      breakLines(plain(12), { usual: 4, strictly: false, tightest: TIGHTEST }, (first, end) => ({
        factor: 4 / (end - first),
        uneven: end - first > most,
      })).map(({ first, end }) => end - first);
    expect(uneven(4)).toEqual([4, 4, 4]);
    expect(uneven(3)).toEqual([3, 3, 3, 3]);
    expect(uneven(2)).toEqual([4, 4, 4]);
  });

  test('hold every bar once, in order, sections apart', () => {
    const bar = fc.record({ startsSection: fc.boolean(), pickup: fc.constant(false) });
    fc.assert(
      fc.property(
        fc.array(bar, { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 1, max: 6 }),
        fc.double({ min: 0.2, max: 8, noNaN: true }),
        (bars, usual, width) => {
          const breaks = breakLines(bars, { usual, strictly: false, tightest: TIGHTEST }, (first, end) => ({
            factor: 4 / ((end - first) * width),
          }));
          expect(breaks[0]?.first).toBe(0);
          expect(breaks.at(-1)?.end).toBe(bars.length);
          for (const [index, { first, end }] of breaks.entries()) {
            expect(end).toBeGreaterThan(first);
            expect(breaks[index + 1]?.first ?? bars.length).toBe(end);
            for (let inner = first + 1; inner < end; inner += 1)
              expect(bars[inner]?.startsSection).toBe(false);
          }
        },
      ),
      { seed: 41, numRuns: 300 },
    );
  });
});

describe('the factor that fills a width', () => {
  /** As plainly as it can be found. */
  function byHalving(bars: readonly BarSpacing[], width: number, most: number): number {
    const total = (factor: number) => bars.reduce((sum, bar) => sum + widthAt(bar, factor), 0);
    if (total(most) <= width) return most;
    let [low, high] = [0, most];
    for (let round = 0; round < 40; round += 1) {
      const middle = (low + high) / 2;
      if (total(middle) <= width) low = middle;
      else high = middle;
    }
    return low;
  }

  const reach = fc.double({ min: 0, max: 40, noNaN: true });
  const bar = fc
    .record({
      ticks: fc.uniqueArray(fc.integer({ min: 0, max: 63 }), { minLength: 1, maxLength: 12 }),
      lefts: fc.array(reach, { minLength: 12, maxLength: 12 }),
      text: fc.option(fc.double({ min: 20, max: 200, noNaN: true }), { nil: null }),
      before: reach,
      after: reach,
    })
    .map(({ ticks, lefts, text, before, after }): BarSpacing => {
      const columns = ticks
        .toSorted((one, other) => one - other)
        .map((tick, index) => ({ tick: tick * 60, left: lefts[index] ?? 0, right: (lefts[index] ?? 0) / 2 }));
      const spans = text === null ? [] : [{ from: 0, to: columns.length, width: text }];
      return { before, after, columns, gaps: gapsOf(columns, 3840, spans) };
    });

  test('is to the last bit the one that halving finds', () => {
    fc.assert(
      fc.property(
        fc.array(bar, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0, max: 3000, noNaN: true }),
        fc.constantFrom(40, 1.7, 3.3),
        (bars, width, most) => {
          expect(factorFor(bars, width, most)).toBe(byHalving(bars, width, most));
        },
      ),
      { numRuns: 300 },
    );
  });
});
