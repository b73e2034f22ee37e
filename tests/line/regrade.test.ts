import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import {
  checkLine,
  composeLine,
  type Level,
  type LineNotes,
  type LineRequest,
  lineDistance,
  measuredLevel,
  musicFindings,
  nearestBars,
  regradeLine,
  withoutChanges,
} from '../../src/core/line';
import { composedWide } from './composed';
import { line, request } from './notation';
import { wideWishes } from './wide-charts';

/** `REGRADED_LINES=300` looks at so many lines. */
const RUNS = { numRuns: Number(process.env.REGRADED_LINES ?? 12), seed: 20261130, endOnFailure: true };

/** Of fewer bars hardly anything can be kept. */
const LEAST_BARS = 4;

interface Case {
  readonly asked: LineRequest;
  readonly bars: LineNotes;
  readonly level: Level;
  readonly harder: boolean;
}

/** A composed line, and the level below or above the one it measures. */
const cases: fc.Arbitrary<Case | null> = fc.tuple(wideWishes, fc.boolean()).map(([wish, harder]) => {
  const { asked, line: made } = composedWide({ ...wish, aims: [] });
  if (made.bars.filter((notes) => notes.length > 0).length < LEAST_BARS) return null;
  const from = measuredLevel(asked, made.bars).level;
  const level = from + (harder ? 1 : -1);
  if (level < 0 || level > 5) return null;
  return { asked: { ...asked, level: level as Level }, bars: made.bars, level: level as Level, harder };
});

const beyond = (asked: LineRequest, bars: LineNotes) =>
  musicFindings(asked, bars).filter(({ kind }) => kind === 'level' || kind === 'fret');

/** How many findings are beyond the level, and how many rules are broken. */
const faultsOf = (asked: LineRequest, bars: LineNotes) => ({
  beyond: beyond(asked, bars).length,
  broken: checkLine(asked, bars).length,
});

const anewOf = (asked: LineRequest, bars: LineNotes): readonly LineNotes[] =>
  [2, 3].map((seed) => composeLine({ ...asked, seed, kept: bars.map(() => null) }).bars);

/** How many bars have something that the level below does not. */
const gained = (asked: LineRequest, bars: LineNotes): number =>
  new Set(beyond({ ...asked, level: Math.max(0, asked.level - 1) as Level }, bars).map(({ bar }) => bar))
    .size;

type Made = ReturnType<typeof regradeLine>;

/** Where chart and tempo leave no line of the level, as in fast music for beginners, no new one is better. */
function keepsLevel({ asked, bars, level }: Case, made: Made, anew: readonly LineNotes[]): void {
  const faults = faultsOf(asked, made.bars);
  if (faults.beyond === 0) {
    expect(faults.broken).toBeLessThanOrEqual(checkLine(asked, bars).length);
    expect(measuredLevel(asked, made.bars).level).toBeLessThanOrEqual(level);
    return;
  }
  for (const other of anew) {
    const { beyond: more, broken } = faultsOf(asked, other);
    expect(faults.beyond).toBeLessThanOrEqual(more + broken);
  }
}

/** Whether a new line is as much of the level as a regraded one: one that is not is easy to have near. */
function isAsGood({ asked, level, harder }: Case, made: Made, anew: LineNotes): boolean {
  if (harder && gained(asked, anew) < gained(asked, made.bars)) return false;
  const [own, other] = [faultsOf(asked, made.bars), faultsOf(asked, anew)];
  if (other.beyond > own.beyond || other.broken > own.broken) return false;
  return measuredLevel(asked, anew).level <= Math.max(level, measuredLevel(asked, made.bars).level);
}

/** The widest move within a bar, in half steps. */
const widestLeap = (notes: LineNotes[number]): number =>
  Math.max(
    0,
    ...notes
      .slice(1)
      .map(({ pitch }, index) => Math.abs(midiOf(pitch) - midiOf(notes[index]?.pitch ?? pitch))),
  );

describe('a regraded line', () => {
  it('keeps all that its level asks, breaks no rule that its origin keeps, and is nearer to it than a new one', () => {
    fc.assert(
      fc.property(cases, (given) => {
        if (given === null) return;
        const { asked, bars, harder } = given;
        const made = regradeLine(asked, bars, harder);
        const anew = anewOf(asked, bars);
        keepsLevel(given, made, anew);
        expect(lineDistance(asked, bars, made.bars)).toEqual(made.distance);
        for (const other of anew.filter((each) => isAsGood(given, made, each))) {
          expect(made.distance.whole).toBeLessThanOrEqual(lineDistance(asked, bars, other).whole + 1e-9);
        }
        for (const { bar, notes, reasons } of made.changes) {
          expect(notes).not.toEqual(bars[bar]);
          expect(widestLeap(notes)).toBeLessThanOrEqual(Math.max(12, widestLeap(bars[bar] ?? [])));
          expect(reasons.length).toBeGreaterThan(0);
        }
        // Refusing every change gives the line back.
        const all = new Set(made.changes.map(({ bar }) => bar));
        expect(withoutChanges(asked, bars, made.changes, all)).toEqual(bars);
      }),
      RUNS,
    );
  }, 600_000);
});

describe('a line whose bars are settled one after the other', () => {
  // A bar that got fewer notes stood beside one that got its own back.
  it('breaks no rule when all of them stand', () => {
    const [given] = fc.sample(cases, { numRuns: 1, seed: 3067 });
    if (given == null) throw new Error('There is a line.');
    const made = regradeLine(given.asked, given.bars, given.harder);
    expect(checkLine(given.asked, given.bars)).toEqual([]);
    expect(checkLine(given.asked, made.bars)).toEqual([]);
    expect(made.changes.length).toBeGreaterThan(0);
  });
});

const pitches = (notes: LineNotes[number] = []) => notes.map(({ pitch }) => midiOf(pitch));

describe('a bar for an easier level', () => {
  const busy = line('E1 E1 G♯1 A1 B1 B1 C♯2 D♯2');
  const asked = request('| E |', { feel: 'soul-backbeat', level: 1 });

  it('keeps its notes on strong beats', () => {
    const [nearest] = nearestBars(asked, busy, 0);
    const at = (tick: number) => nearest?.find(({ start }) => start === tick)?.pitch;
    expect(at(0)).toEqual(busy[0]?.[0]?.pitch);
    expect(at(1920)).toEqual(busy[0]?.[4]?.pitch);
    expect(nearest?.length).toBeGreaterThan(2);
  });
});

describe('the distance of two lines', () => {
  const asked = request('| C | C |', { feel: 'soul-backbeat', level: 3 });
  const tune = line('C2 . E2 . G2 . E2 . | C2 . . . G1 . . .');

  it('is nothing for the same line and grows with what is given up', () => {
    expect(lineDistance(asked, tune, tune).whole).toBe(0);
    const thinned = line('C2 . . . G2 . . . | C2 . . . G1 . . .');
    const turned = line('C2 . . . G1 . . . | C2 . . . G1 . . .');
    expect(lineDistance(asked, tune, thinned)).toMatchObject({ strongBeats: 0, rhythm: 0.25 });
    expect(lineDistance(asked, tune, turned).contour).toBeGreaterThan(
      lineDistance(asked, tune, thinned).contour,
    );
    expect(lineDistance(asked, tune, turned).strongBeats).toBe(0.25 / 2);
    expect(pitches(thinned[0])).toEqual([36, 43]);
  });
});
