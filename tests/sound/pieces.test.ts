import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { buildPerformance, secondsAt } from '../../src/core/performance';
import type { Leaving } from '../../src/sound/synthesis/left';
import { placePerformance, renderWindow, sampleAt } from '../../src/sound/synthesis/score';
import {
  isInPieces,
  renderHead,
  renderPiece,
  renderRest,
  type SegmentRequest,
} from '../../src/sound/synthesis/segment';
import { STEMS, type Stem } from '../../src/sound/synthesis/stems';
import { createKit } from '../../src/sound/synthesis/voices';
import { sheetOf } from '../performance/sheets';
import { SKA_LINE, skaTune } from './tunes';

/** Few samples a second: what is tested here does not depend on how many. */
const RATE = 12_000;
const kit = createKit(RATE);

const longTune = (tempo = 90, bars = 12) =>
  buildPerformance(
    sheetOf({
      chart: Array.from({ length: bars / 4 }, () => '| F | Dm | Gm | C7 |').join('\n'),
      feel: 'early-ska',
      bars: Array.from({ length: bars }, (_, bar) => SKA_LINE[bar % 4] ?? ''),
    }),
    { tempo: bpm(tempo), countIn: 1, passage: null, humaniseSeed: 3, drumSeed: 3 },
  );

/** What is heard of a segment that is made in pieces. */
function inPieces(request: SegmentRequest, stem: Stem, length: number, pieceLength: number): Float32Array {
  const { lead, leadLength } = renderHead(request, kit);
  const heard = new Float32Array(length);
  heard.set(lead[stem].subarray(0, length));
  for (let from = leadLength; from < length; from += pieceLength) {
    const piece = renderPiece(request, kit, from, pieceLength)[stem];
    if (piece.length === 0) break;
    heard.set(piece.subarray(0, length - from), from);
  }
  return heard;
}

function largestDifference(one: Float32Array, other: Float32Array): number {
  expect(one.length).toBe(other.length);
  return one.reduce((most, sample, index) => Math.max(most, Math.abs(sample - (other[index] ?? 0))), 0);
}

describe('a long round', () => {
  const performance = longTune();
  const placed = placePerformance(performance, kit);

  test.each([
    ['from its count-in, for ever', 'endless', 0],
    ['from its count-in, twice, with its last rings', 2, 0],
    ['entered in its sixth bar, for ever', 'endless', 6 * 3840],
    ['entered near its end, three times', 3, 12 * 3840 + 1908],
  ] as const)('in pieces is the performance to the sample: %s', (_, rounds, begin) => {
    const request = { performance, rounds, begin, leaving: null };
    const head = renderHead(request, kit);
    expect(isInPieces(head)).toBe(true);
    const length = rounds === 'endless' ? 3 * head.roundLength : (head.total ?? 0) + placed.longest + 100;
    const straight = renderWindow(placed, rounds, head.begin, head.begin, head.begin + length);
    for (const stem of STEMS) {
      for (const pieceLength of [6 * RATE, 7777])
        expect(
          largestDifference(inPieces(request, stem, length, pieceLength), straight[stem]),
          stem,
        ).toBeLessThan(1e-6);
    }
  });

  test('is over when its last ring is', () => {
    const request = { performance, rounds: 1, begin: 0, leaving: null };
    const end = (renderHead(request, kit).total ?? 0) + placed.longest;
    expect(renderPiece(request, kit, end - 100, RATE).bass).toHaveLength(100);
    expect(renderPiece(request, kit, end, RATE).bass).toHaveLength(0);
  });

  test('begins with as little as a round of any other length does', () => {
    const lengths = [12, 64].map(
      (bars) =>
        renderHead({ performance: longTune(90, bars), rounds: 1, begin: 0, leaving: null }, kit).leadLength,
    );
    expect(lengths[0]).toBe(lengths[1]);
    expect(isInPieces(renderHead({ performance: skaTune(), rounds: 1, begin: 0, leaving: null }, kit))).toBe(
      false,
    );
  });

  test('has what rang before it in every piece that it rings into', () => {
    const old = longTune(120);
    const leaving: Leaving = { performance: old, tick: 5 * 3840, round: 1, entered: 0, before: null };
    const request = { performance, rounds: 'endless', begin: 4 * 3840, leaving } as const;
    const length = 8 * RATE;
    const oldPlaced = placePerformance(old, kit);
    const left = sampleAt(old, 5 * 3840, RATE) - oldPlaced.countIn + oldPlaced.round;
    const struck = [0, 1].flatMap((round) =>
      oldPlaced.within.map((voice) => ({ ...voice, at: voice.at + round * oldPlaced.round })),
    );
    const ring = renderWindow(
      { ...oldPlaced, within: [], before: struck.filter(({ at }) => at < left) },
      1,
      0,
      left,
      left + length,
    );
    for (const stem of STEMS) {
      const alone = inPieces({ ...request, leaving: null }, stem, length, RATE);
      const expected = ring[stem].map((sample, index) => sample + (alone[index] ?? 0));
      // The lead of four seconds is cut short, so that rings reach beyond it.
      expect(largestDifference(inPieces(request, stem, length, RATE), expected), stem).toBeLessThan(1e-6);
    }
  });
});

describe('a note that is held over a change of the tempo', () => {
  const held = (tempo: number) =>
    buildPerformance(
      sheetOf({
        chart: '| F | F | F | F |',
        feel: 'one-drop',
        bars: ['1 F1 w', '1 F1 h, 3 A1 h', '1 F1 w', '1 C2 w'],
      }),
      { tempo: bpm(tempo), countIn: 0, passage: null },
    );

  /** Seconds after the change until nothing of the bass is left, where nothing new is struck. */
  function endsAfter(from: number, to: number, heldAt?: number): number {
    const performance = held(from);
    const entered = held(to);
    const tick = 960;
    const leaving: Leaving = {
      performance,
      tick,
      round: 0,
      entered: 0,
      before: null,
      ...(heldAt === undefined ? {} : { heldAt: bpm(heldAt) }),
    };
    const silent = { ...entered, events: entered.events.filter(({ part }) => part !== 'bass') };
    const { lead } = renderHead({ performance: silent, rounds: 'endless', begin: tick, leaving }, kit, 1);
    return (lead.bass.findLastIndex((sample) => sample !== 0) + 1) / RATE;
  }

  test.each([
    [120, 60],
    [120, 90],
    [90, 160],
    [60, 240],
  ])('goes on at the new tempo: from %i to %i', (from, to) => {
    expect(endsAfter(from, to, to)).toBeGreaterThan((3 * 60) / to - 0.03);
    expect(endsAfter(from, to, to)).toBeLessThan((3 * 60) / to + 0.03);
    expect(endsAfter(from, to)).toBeCloseTo((3 * 60) / from, 1);
  });

  test('goes on without a step, sample by sample, until it ends', () => {
    for (const [from, to] of [
      [120, 60],
      [120, 100],
      [90, 200],
    ] as const) {
      const performance = held(from);
      const placed = placePerformance(performance, kit);
      for (const tick of [240, 948, 1908, 3828]) {
        const cut = sampleAt(performance, tick, RATE) - placed.countIn;
        const straight = renderWindow(placed, 1, 0, cut, cut + RATE);
        const leaving: Leaving = { performance, tick, round: 0, entered: 0, heldAt: bpm(to), before: null };
        const next = held(to);
        const silent = { ...next, events: [] };
        const { lead } = renderHead({ performance: silent, rounds: 'endless', begin: tick, leaving }, kit);
        const left = secondsAt(performance, 3840 - tick) / Math.max(1, to / from);
        // Until either of them is let go.
        const same = Math.max(8, Math.floor((left - 0.03) * RATE));
        const count = Math.min(same, RATE, lead.bass.length);
        expect(
          largestDifference(lead.bass.slice(0, count), straight.bass.slice(0, count)),
          `${from} to ${to} at ${tick}`,
        ).toBeLessThan(1e-6);
      }
    }
  });

  test('does so in every round but those before, and keeps what was left before it', () => {
    const performance = held(100);
    const leaving: Leaving = { performance, tick: 960, round: 2, entered: 0, heldAt: bpm(50), before: null };
    const silent = { ...held(50), events: [] };
    const request = { performance: silent, rounds: 'endless', begin: 960, leaving } as const;
    const first = renderHead({ ...request, leaving: { ...leaving, round: 0 } }, kit).lead.bass;
    const third = renderHead(request, kit).lead.bass;
    const length = Math.min(first.length, third.length);
    expect(largestDifference(third.slice(0, length), first.slice(0, length))).toBeLessThan(1e-6);
  });

  test('leaves a short round as it is', () => {
    const request = { performance: held(100), rounds: 2, begin: 0, leaving: null };
    expect(renderRest(request, kit).round.bass).toHaveLength(renderHead(request, kit).roundLength);
  });
});
