import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { buildPerformance, type Performance, type PerformanceOptions } from '../../src/core/performance';
import { sampleAt } from '../../src/sound/synthesis/score';
import { takeOverAt } from '../../src/sound/take-over';
import type { Scheduled } from '../../src/sound/timeline';
import { sheetOf } from '../performance/sheets';
import { RATE, schedule as scheduleAt } from './scheduled';
import { skaTune } from './tunes';

const schedule = (
  performance: Performance,
  rounds: Scheduled['rounds'] = 'endless',
  entered = 0,
): Scheduled => scheduleAt(performance, entered, 1000, rounds);

const bassOf = ({ events }: Performance) => events.filter(({ part }) => part === 'bass');

/** A line with a pickup, ties, sixteenths and a bar of another length. */
const variedTune = (options: Partial<PerformanceOptions>): Performance =>
  buildPerformance(
    sheetOf({
      chart: '| F | Dm | Gm | C7 |',
      feel: 'one-drop',
      bars: ['1 F1 q., 2& A1 8, 3 C2 h', '1 D2 w', '1 G1 16, 1e Bb1 16, 1& D2 8, 2& D2 8, 3 G1 h', '2 C2 h'],
    }),
    { tempo: bpm(100), countIn: 1, passage: null, ...options },
  );

describe('another tempo of the same music', () => {
  const slow = skaTune({ tempo: bpm(60) });

  test('takes over at the next beat, just before what may be played early on it', () => {
    const entering = skaTune({ tempo: bpm(90), countIn: 0 });
    // A second into the first bar: the second beat begins there, the third can be met.
    const place = takeOverAt(schedule(slow), 1000 + 5.1 * RATE, entering, Number.POSITIVE_INFINITY);
    expect(place).toEqual({
      sample: 1000 + sampleAt(slow, 3840 + 1908, RATE),
      tick: 3840 + 1908,
      round: 0,
      entered: 1908,
      heldAt: 90,
    });
  });

  test('takes over at a part of a beat where the next one would be too late', () => {
    const entering = skaTune({ tempo: bpm(90), countIn: 0 });
    const sample = 1000 + 5.2 * RATE;
    const at = (latest: number) => takeOverAt(schedule(slow), sample, entering, latest).entered;
    expect(at(sample + 0.8 * RATE)).toBe(1908);
    expect(at(sample + 0.5 * RATE)).toBe(960 + 480 - 12);
    expect(at(sample + 0.2 * RATE)).toBe(960 + 240 - 12);
    expect(at(sample)).toBe(1908);
  });

  test('takes over where the round begins, exactly', () => {
    const entering = skaTune({ tempo: bpm(90), countIn: 0 });
    const place = takeOverAt(schedule(slow), 1000 + 19.9 * RATE, entering, Number.POSITIVE_INFINITY);
    expect(place).toMatchObject({ sample: 1000 + 20 * RATE, tick: slow.end, entered: 0 });
    const next = takeOverAt(schedule(slow), 1000 + 20.5 * RATE, entering, Number.POSITIVE_INFINITY);
    expect(next).toMatchObject({ tick: 3840 + 948, round: 1, entered: 948 });
  });

  test('takes over within the count-in where it has the same one, else with the music', () => {
    const sample = 1000 + 1.5 * RATE;
    const counted = takeOverAt(schedule(slow), sample, skaTune({ tempo: bpm(90) }), Number.POSITIVE_INFINITY);
    expect(counted).toMatchObject({ tick: 1908, entered: 1908 });
    const entering = skaTune({ tempo: bpm(90), countIn: 0 });
    const other = takeOverAt(schedule(slow), sample, entering, Number.POSITIVE_INFINITY);
    expect(other).toMatchObject({ tick: 3840, entered: 0 });
  });

  test('goes on in the whole round after the rest of one', () => {
    const rest = skaTune({ tempo: bpm(60), countIn: 0, from: 2 });
    const begins = { rung: 0, round: 0, playedBar: 2 };
    const entering = skaTune({ tempo: bpm(90), countIn: 0 });
    const place = takeOverAt({ ...schedule(rest), begins }, 1000 + 0.5 * RATE, entering, 1e9);
    expect(place).toMatchObject({ tick: 948, entered: 2 * 3840 + 948 });
  });

  test('strikes every note of the line once, wherever it takes over, however unevenly people play', () => {
    fc.assert(
      fc.property(
        fc.record({
          from: fc.integer({ min: 40, max: 240 }),
          to: fc.integer({ min: 40, max: 240 }),
          seeds: fc.tuple(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 1e6 })),
          share: fc.double({ min: 0, max: 1, noNaN: true }),
          patience: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        ({ from, to, seeds, share, patience }) => {
          fc.pre(from !== to);
          const [one, other] = seeds;
          const leaving = variedTune({ tempo: bpm(from), humaniseSeed: one, drumSeed: one });
          const entering = variedTune({ tempo: bpm(to), humaniseSeed: other, drumSeed: other, countIn: 0 });
          const scheduled = schedule(leaving);
          const { roundLength, begin } = scheduled.segment;
          const sample = Math.round(1000 - begin + share * roundLength);
          const latest = sample + (patience * 60 * RATE) / from;
          const place = takeOverAt(scheduled, sample, entering, latest);
          expect(place.sample).toBeGreaterThanOrEqual(sample - 1);
          expect(place.sample - sample).toBeLessThanOrEqual((1.02 * 60 * RATE) / from + 1);
          const before = bassOf(leaving).filter(({ start }) => start < place.tick);
          const after = bassOf(entering).filter(({ start }) => start >= place.entered);
          const isBorder = place.tick === leaving.end;
          expect(before.length + (isBorder ? 0 : after.length)).toBe(bassOf(leaving).length);
          if (isBorder) expect(after).toHaveLength(bassOf(entering).length);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('other music', () => {
  test('takes over at a bar line, and so does the same at the same tempo', () => {
    const slow = skaTune({ tempo: bpm(60), countIn: 0 });
    const passage = skaTune({ tempo: bpm(90), countIn: 0, passage: { first: 3, last: 4 } });
    for (const entering of [passage, variedTune({ countIn: 0 }), skaTune({ tempo: bpm(60), countIn: 0 })]) {
      const place = takeOverAt(schedule(slow), 1000 + 0.5 * RATE, entering, 1000 + RATE);
      expect(place).toMatchObject({ sample: 1000 + 4 * RATE, tick: 3840 });
      expect(place).not.toHaveProperty('heldAt');
    }
  });
});
