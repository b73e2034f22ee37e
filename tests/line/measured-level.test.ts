import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TICKS_PER_QUARTER } from '../../src/core/base';
import { feelById } from '../../src/core/feel';
import { composeLine, LEVELS, measuredLevel, musicFindings } from '../../src/core/line';
import { rhythmLevelIn } from '../../src/core/line/level';
import { line, request } from './notation';
import { randomLines } from './random-lines';

const CHART = '| C | F | G7 | C |';
const measured = (notes: string, tempo = 120) =>
  measuredLevel(request(CHART, { feel: 'early-ska', level: 5, tempo }), line(notes));

/** The rows of the level table: common practice, no source. */
describe('the level of a line is measured', () => {
  test.each([
    [0, 'roots in halves', 'C2 . . . C2 . . . | F1 . . . F1 . . . | G1 . . . G1 . . . | C2 . . . - - - -'],
    [1, 'with the fifth', 'C2 . . . G1 . . . | F1 . . . C2 . . . | G1 . . . D2 . . . | C2 . . . - - - -'],
    [
      2,
      'with the third',
      'C2 . E2 . G1 . E1 . | F1 . A1 . C2 . A1 . | G1 . B1 . D2 . B1 . | C2 . . . - - - -',
    ],
    [
      3,
      'with scale steps',
      'C2 . D2 . E2 . D2 . | F1 . G1 . A1 . G1 . | G1 . A1 . B1 . A1 . | C2 . . . - - - -',
    ],
  ] as const)('%i: %s', (level, _, notes) => {
    expect(measured(notes).level).toBe(level);
  });

  test('sixteenths come a level earlier where a feel is made of them, triplets do not', () => {
    const beat = TICKS_PER_QUARTER;
    const metre = { count: 4, unit: 4 } as const;
    const rhythm = (...places: readonly (readonly [start: number, duration: number])[]) =>
      places.map(([start, duration]) => ({ start: start * beat, duration: duration * beat }));
    const rows = [
      { notes: rhythm([0, 0.25], [0.25, 0.25], [1, 1]), plain: 4, funk: 3 },
      { notes: rhythm([0, 0.75], [0.75, 0.25], [1.5, 0.25], [1.75, 0.25]), plain: 5, funk: 4 },
      { notes: rhythm([0, 1 / 3], [1 / 3, 1 / 3], [2 / 3, 1 / 3]), plain: 5, funk: 5 },
      { notes: rhythm([0, 0.5], [0.5, 0.5], [1, 1]), plain: 1, funk: 1 },
    ];
    for (const { notes, plain, funk } of rows) {
      expect(rhythmLevelIn(notes, metre, feelById('disco').bassRole)).toBe(plain);
      expect(rhythmLevelIn(notes, metre, feelById('funk').bassRole)).toBe(funk);
    }
  });

  test('speed counts at the tempo, and is told by the busiest bar', () => {
    const eighths = 'C2 C2 C2 C2 C2 C2 C2 C2 | F1 . . . F1 . . . | G1 . . . G1 . . . | C2 . . . - - - -';
    expect(measured(eighths, 60).notesPerSecond).toBeCloseTo(2);
    expect(measured(eighths, 180).notesPerSecond).toBeCloseTo(6);
    expect(measured(eighths, 180).level).toBeGreaterThan(measured(eighths, 60).level);
  });

  test('a note high on the neck needs the level whose frets reach it', () => {
    expect(measured('G3 . . . C2 . . . | F1 . . . | G1 . . . | C2 . . .').level).toBe(5);
  });

  test('a composed line is of the level that it was composed for, or below it', () => {
    for (const level of LEVELS) {
      const asked = request(CHART, { level, feel: 'early-ska' });
      expect(measuredLevel({ ...asked, level: 5 }, composeLine(asked).bars).level).toBeLessThanOrEqual(level);
    }
  });

  test('any line is at the first level at which the check finds its frets kept, and nine bars of ten', () => {
    fc.assert(
      fc.property(randomLines, ({ asked, bars }) => {
        const sounding = bars.filter((notes) => notes.length > 0).length;
        const keeps = LEVELS.find((level) => {
          const found = musicFindings({ ...asked, level }, bars);
          const beyond = new Set(found.filter(({ kind }) => kind === 'level').map(({ bar }) => bar));
          return found.every(({ kind }) => kind !== 'fret') && beyond.size * 10 <= sounding;
        });
        expect(measuredLevel(asked, bars).level).toBe(keeps ?? 5);
      }),
      { numRuns: 60 },
    );
  });
});
