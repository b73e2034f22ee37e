import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barToRead, countedBeat, scrollAhead } from '../../src/app/pages/score/reading-ahead';
import { bpm, ticks } from '../../src/core/base';
import type { Performance } from '../../src/core/performance';

const BEAT = 960;
const BAR = BEAT * 4;

/** A bar of count-in, then these written bars of four beats. */
const performance = (bars: readonly number[]): Performance => ({
  tempo: bpm(100),
  beat: ticks(BEAT),
  countIn: ticks(BAR),
  intro: ticks(0),
  ending: null,
  end: ticks(BAR * (bars.length + 1)),
  bars: bars.map((bar, index) => ({ bar, start: ticks(BAR * (index + 1)), duration: ticks(BAR) })),
  events: [],
});

/** A moment by the played bar, from 0, −1 the count-in, and its beat from 0. */
const at = (bars: readonly number[], playedBar: number, beat: number) => ({
  place: { rung: 0, round: 0, playedBar: Math.max(0, playedBar) },
  performance: performance(bars),
  tick: BAR * (playedBar + 1) + BEAT * beat,
  playedBar: playedBar < 0 ? null : playedBar,
  bar: bars[playedBar] ?? null,
});

describe('the bar that is read', () => {
  test('is the first one during the count-in', () => {
    expect(barToRead(at([4, 5], -1, 0), false)).toBe(4);
  });

  test('is the one that sounds, and on its last beat the next one, across repeats as well', () => {
    expect(barToRead(at([0, 1, 0, 1], 1, 2.9), false)).toBe(1);
    expect(barToRead(at([0, 1, 0, 1], 1, 3), false)).toBe(0);
  });

  test('stays on the last one, or goes round with a loop', () => {
    expect(barToRead(at([2, 3], 1, 3.5), false)).toBe(3);
    expect(barToRead(at([2, 3], 1, 3.5), true)).toBe(2);
  });
});

test('the count-in counts each of its bars from one and ends with the music', () => {
  const metre = { count: 4, unit: 4 } as const;
  expect([0, 1.5, 3].map((beat) => countedBeat(at([0], -1, beat), metre))).toEqual([1, 2, 4]);
  expect(countedBeat(at([0], 0, 0), metre)).toBeNull();
});

describe('scrolling ahead', () => {
  const view = { top: 60, bottom: 700 };

  test('does nothing while what is read and what comes next are in view', () => {
    expect(scrollAhead({ top: 60, bottom: 300 }, { top: 320, bottom: 560 }, view)).toBe(0);
  });

  test('puts what is read at the top where the next one would be cut', () => {
    expect(scrollAhead({ top: 400, bottom: 640 }, { top: 660, bottom: 900 }, view)).toBe(340);
  });

  test('always leaves what is read in view, with its tab at the bottom where it is higher than the window', () => {
    const reach = fc.tuple(fc.integer({ min: -2000, max: 3000 }), fc.integer({ min: 20, max: 900 }));
    fc.assert(
      fc.property(reach, fc.integer({ min: 20, max: 900 }), ([top, height], next) => {
        const coming = { top, bottom: top + height };
        const down = scrollAhead(coming, { top: coming.bottom, bottom: coming.bottom + next }, view);
        const moved = { top: coming.top - down, bottom: coming.bottom - down };
        expect(moved.bottom).toBeLessThanOrEqual(view.bottom);
        if (height <= view.bottom - view.top) expect(moved.top).toBeGreaterThanOrEqual(view.top);
        else expect(moved.bottom).toBe(view.bottom);
        if (height + next <= view.bottom - view.top)
          expect(moved.bottom + next).toBeLessThanOrEqual(view.bottom);
      }),
      { numRuns: 200, seed: 20261129 },
    );
  });
});
