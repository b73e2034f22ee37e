import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { breakLines, TIGHTEST } from '../../src/score/layout/breaks';
import { type Column, gapsOf, placeColumns } from '../../src/score/layout/spacing';
import type { Position } from '../../src/score/types';
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

  test('a flag spreads its whole bar rather than make its eighth too wide', () => {
    const flagged = { right: 14.5 };
    const columns = [head(0), head(960, flagged), head(1440, flagged), head(1920)];
    const [quarter = 0, eighth = 0] = distances(columns, 3840, 1);
    expect(quarter / eighth).toBeCloseTo(1.45, 2);
  });

  test('a bar spreads no farther than slight ink asks, so that a full line still holds it', () => {
    const plain = distances(at(0, 960, 1920, 2160), 3840, 0.85);
    const apart = distances([head(0), head(960), head(1920, { right: 30 }), head(2160)], 3840, 0.85);
    expect(plain[0]).toBeLessThan(31 * 0.85 * 1.2 + 0.01);
    expect(apart[0]).toBeCloseTo(31 * 0.85, 1);
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

  describe('in every bar of the golden scores notes twice as long stand 1.4 to 1.6 as wide', () => {
    /**
     * The bars, by their index, in which ink asks for more than a note's time, and what ink; the gap behind a bar's last
     * note, which the bar line bounds, is not measured at all.
     */
    const WIDER_INK: Readonly<Record<string, string>> = {
      'high-ledger 1': 'ledger lines on a sixteenth',
      'low-ledger 1': 'ledger lines on every sixteenth',
      'off-beats 2': 'a tie, and a sharp behind an eighth rest',
      'playing-signs 0': 'a hammer-on, a pull-off and a slide between eighths',
      'playing-signs 1': 'a slide into a note from above',
      'playing-signs 3': 'a sharp',
      'shifts 6': 'ledger lines on every sixteenth but the last',
      'syncopated 0': 'a tie from a sixteenth',
      'syncopated 1': 'a tie between eighths, and their flags',
      'syncopated 2': 'a natural behind a sixteenth rest',
    };
    const ratios = Object.entries(SCORE_FIXTURES).flatMap(([name, make]) =>
      engrave(make(), NOTES_ONLY).systems.flatMap(({ bars }) =>
        bars.flatMap(({ bar, positions }) =>
          ratiosOf(positions).map((ratio) => ({ ...ratio, of: `${name} ${bar}` })),
        ),
      ),
    );
    const astray = ratios.filter(({ least, most }) => least < 1.4 || most > 1.6);

    test('but where an accidental, ledger lines, a tie or a sign needs more', () => {
      expect([...new Set(astray.map(({ of }) => of))].sort()).toEqual(Object.keys(WIDER_INK).sort());
    });

    test.each([
      [960, 100],
      [480, 12],
    ])('measured in many bars: %i ticks to half as many', (long, bars) => {
      expect(ratios.filter((ratio) => ratio.long === long).length).toBeGreaterThan(bars);
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
      return 4 / sum;
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
      return breakLines(bars, fullness, (first, end) => 4 / ((end - first) * width)).map(
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

  test('hold every bar once, in order, sections apart', () => {
    const bar = fc.record({ startsSection: fc.boolean(), pickup: fc.constant(false) });
    fc.assert(
      fc.property(
        fc.array(bar, { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 1, max: 6 }),
        fc.double({ min: 0.2, max: 8, noNaN: true }),
        (bars, usual, width) => {
          const breaks = breakLines(
            bars,
            { usual, strictly: false, tightest: TIGHTEST },
            (first, end) => 4 / ((end - first) * width),
          );
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
