import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { entryTick, nextBarLine, positionIn } from '../../src/sound/timeline';
import { RATE, schedule } from './scheduled';
import { skaTune } from './tunes';

const tune = skaTune({ tempo: bpm(120) });
const BAR = 2 * RATE;

describe('the playhead', () => {
  const endless = schedule(tune, 0, 1000, 'endless');

  test('stands in the count-in, then in the bars, round after round', () => {
    const at = (seconds: number) => positionIn(endless, 1000 + seconds * RATE);
    expect(at(0)).toMatchObject({ tick: 0, bar: null, place: { round: 0 } });
    expect(at(1.9).bar).toBeNull();
    expect(at(2)).toMatchObject({ bar: 0, playedBar: 0, place: { round: 0 } });
    expect(at(4.5).bar).toBe(1);
    expect(at(9.99).bar).toBe(3);
    expect(at(10)).toMatchObject({ bar: 0, place: { round: 1 }, tick: 3840 });
    expect(at(2 + 8 * 100 + 2.5)).toMatchObject({ bar: 1, place: { round: 100 } });
  });

  test('counts from where the performance was entered', () => {
    const entered = schedule(tune, 3840 * 3, 0, 'endless');
    expect(positionIn(entered, 0)).toMatchObject({ bar: 2, place: { round: 0 } });
    expect(positionIn(entered, 2 * BAR)).toMatchObject({ bar: 0, place: { round: 1 } });
  });
});

describe('the next bar line', () => {
  test('is the end of the bar that is played', () => {
    const endless = schedule(tune, 0, 1000, 'endless');
    expect(nextBarLine(endless, 1000)).toEqual({ sample: 1000 + BAR, tick: 3840, round: 0, nextBar: 0 });
    expect(nextBarLine(endless, 1000 + BAR + 1)).toEqual({
      sample: 1000 + 2 * BAR,
      tick: 2 * 3840,
      round: 0,
      nextBar: 1,
    });
    expect(nextBarLine(endless, 1000 + 4.5 * BAR)).toMatchObject({
      sample: 1000 + 5 * BAR,
      tick: tune.end,
      nextBar: 0,
    });
    expect(nextBarLine(endless, 1000 + 5.5 * BAR)).toMatchObject({
      sample: 1000 + 6 * BAR,
      tick: 2 * 3840,
      round: 1,
      nextBar: 1,
    });
  });

  test('stops at the empty bar too', () => {
    const gap = schedule(skaTune({ tempo: bpm(120), countIn: 0, emptyBar: true }), 0, 0, 'endless');
    expect(nextBarLine(gap, 3.5 * BAR)).toMatchObject({ sample: 4 * BAR, nextBar: 0 });
    expect(nextBarLine(gap, 4.5 * BAR)).toMatchObject({ sample: 5 * BAR, nextBar: 0 });
  });
});

describe('a new performance is entered', () => {
  const same = skaTune({ tempo: bpm(90), countIn: 0 });

  test('at the bar that would have come next', () => {
    expect(entryTick(tune, 2, same)).toBe(2 * 3840);
  });

  test('at the written bar when the order differs, else at the beginning', () => {
    const passage = skaTune({ countIn: 0, passage: { first: 3, last: 4 } });
    expect(entryTick(tune, 3, passage)).toBe(3840);
    expect(entryTick(tune, 0, passage)).toBe(0);
    expect(entryTick(passage, 1, tune)).toBe(3840 * 4);
  });

  test('after its count-in', () => {
    const counted = skaTune({ passage: { first: 3, last: 4 } });
    expect(entryTick(tune, 0, counted)).toBe(counted.countIn);
  });
});

describe('the rest of a round that was begun in its middle', () => {
  const whole = skaTune({ countIn: 0 });
  const rest = skaTune({ countIn: 0, from: 2 });

  test('is placed in the whole round, and so is what comes after it', () => {
    const begins = { rung: 1, round: 2, playedBar: 2 };
    const scheduled = { ...schedule(rest, 0, 0, 'endless'), begins };
    expect(positionIn(scheduled, BAR)).toMatchObject({ bar: 3, place: { rung: 1, round: 2, playedBar: 3 } });
    const next = { ...schedule(whole, 0, 0, 'endless'), begins, firstRound: 1 };
    expect(positionIn(next, BAR)).toMatchObject({ bar: 1, place: { rung: 1, round: 3, playedBar: 1 } });
  });

  test('goes on in the whole round with the bar that would have come next', () => {
    expect(entryTick(rest, 1, whole, true)).toBe(3 * 3840);
    expect(entryTick(rest, 0, whole, true)).toBe(0);
  });
});
