import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fret, midiNumber, stringNumber, ticks } from '../../src/core/base';
import {
  createHandGauge,
  createInstrument,
  DEFAULT_HAND,
  fingerLine,
  HAND_SPANS,
  type HandSettings,
  handSpan,
  type Instrument,
  pitchAt,
  placesOf,
  TUNINGS,
} from '../../src/core/fretboard';
import {
  contextOf,
  contexts,
  hands,
  instruments,
  instrumentsTuned,
  lines,
  ONCE,
  oddInstruments,
  pinnedLines,
  roundOf,
} from './arbitrary';
import { leastCost } from './exhaustive';
import { run, written } from './lines';

const bass = createInstrument();
const CLOSED: HandSettings = { ...DEFAULT_HAND, openStrings: 'avoid' };

/** Frets above the first finger's that each finger may hold; −1 and the last one by reaching out. */
const OFFSETS = {
  'one finger per fret': { 1: [-1, 0], 2: [1], 3: [2], 4: [3, 4] },
  '1-2-4': { 1: [-1, 0], 2: [1], 3: [], 4: [2, 3] },
  automatic: { 1: [-1, 0], 2: [1], 3: [2], 4: [2, 3, 4] },
};

/** Every way to play each line is tried, and none of them is cheaper than what the search has found. */
function expectBest(instruments: fc.Arbitrary<Instrument>, most: number, runs: number): { looped: number } {
  let looped = 0;
  fc.assert(
    fc.property(pinnedLines(1, most), instruments, hands, contexts, (notes, instrument, hand, asked) => {
      const playable = notes.filter(({ midi }) => placesOf(midi, instrument).length > 0);
      const context = contextOf(playable, asked);
      if (context.loop !== null) looped += 1;
      const { cost } = fingerLine(playable, instrument, hand, context);
      expect(cost).toBeCloseTo(playable.length === 0 ? 0 : leastCost(playable, instrument, hand, context), 9);
    }),
    { seed: 3, numRuns: runs },
  );
  return { looped };
}

describe('the cheapest of all ways', () => {
  it.each(TUNINGS)('is found for 600 lines of up to three notes: $id', (tuning) => {
    const { looped } = expectBest(instrumentsTuned(tuning), 3, 600);
    expect(looped).toBeGreaterThan(200);
  });

  it('is found for 600 lines on instruments of any tuning', () => {
    expectBest(oddInstruments, 3, 600);
  });

  it('is found for 120 lines of up to four notes', () => {
    expectBest(instruments, 4, 120);
  });
});

describe('a fingered line', () => {
  it('sounds every note at its place, with a finger where the hand has one', () => {
    fc.assert(
      fc.property(lines(0, 20), instruments, hands, fc.boolean(), (notes, instrument, hand, loop) => {
        const { notes: fingered, cost } = fingerLine(notes, instrument, hand, roundOf(notes, loop));
        expect(fingered).toHaveLength(notes.length);
        expect(Number.isFinite(cost)).toBe(true);
        fingered.forEach((at, index) => {
          const midi = notes[index]?.midi ?? midiNumber(0);
          expect(at === null).toBe(placesOf(midi, instrument).length === 0);
          if (at === null) return;
          expect(pitchAt(at, instrument)).toBe(midi);
          expect(at.finger === 0).toBe(at.fret === 0);
          if (at.finger === 0) return;
          const low = hand.system !== '1-2-4' || at.position < (hand.oneTwoFourBelow ?? 25);
          const system = low ? (hand.system ?? 'one finger per fret') : 'one finger per fret';
          expect(OFFSETS[system][at.finger]).toContain(at.fret - at.position);
        });
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it('never needs more than the reach without a shift', () => {
    fc.assert(
      fc.property(lines(2, 20), instruments, hands, (notes, instrument, hand) => {
        const { notes: fingered } = fingerLine(notes, instrument, hand, ONCE);
        const sounding = fingered.filter((at) => at !== null);
        sounding.forEach((at, index) => {
          const before = sounding[index - 1];
          if (before === undefined || before.finger === 0 || at.finger === 0) return;
          if (before.position !== at.position) return;
          expect(handSpan(before.fret, at.fret, instrument.scaleLength)).toBeLessThanOrEqual(hand.reach);
        });
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it('counts the shifts between sounding notes', () => {
    const far = run([29, 53, 29]);
    expect(fingerLine(far, bass, DEFAULT_HAND, ONCE).shifts).toBe(2);
    expect(fingerLine(run([36, 43, 36]), bass, DEFAULT_HAND, ONCE).shifts).toBe(0);
    const seam = { ...ONCE, loop: ticks(960) };
    expect(fingerLine(run([29, 53]), bass, DEFAULT_HAND, seam).shifts).toBe(2);
  });

  it('stays on a repeated note', () => {
    const { notes } = fingerLine(run([36, 36, 36, 38, 38]), bass, DEFAULT_HAND, ONCE);
    expect(new Set(notes.slice(0, 3).map((at) => JSON.stringify(at))).size).toBe(1);
    expect(notes[3]).toEqual(notes[4]);
  });

  it('moves the hand during a rest rather than between running notes', () => {
    // From F to a high D and back again: the long note before the rest, or the rest itself, gives the time.
    const notes = run([29, 31, 33, 50, 48, 50], 240);
    const rested = notes.map((note, index) =>
      index < 3 ? note : { ...note, start: ticks(note.start + 1920) },
    );
    const running = fingerLine(notes, bass, CLOSED, ONCE);
    const withRest = fingerLine(rested, bass, CLOSED, ONCE);
    expect(withRest.cost).toBeLessThan(running.cost);
    expect(withRest.notes.map((at) => at?.position)).toMatchObject({ 2: withRest.notes[1]?.position });
    expect(withRest.notes[3]?.position).toBe(withRest.notes[5]?.position);
  });

  it('stays where it is, however long the rests are, where a position holds all of a line', () => {
    // Position I holds it; there and back to position III would save the hand no more than a wide grip.
    const notes = run([32, 34, 36, 29, 31, 32, 36, 39]).map((note, index) => ({
      ...note,
      start: ticks(index * 1920),
    }));
    const { shifts } = fingerLine(notes, bass, DEFAULT_HAND, { ...ONCE, loop: ticks(8 * 1920) });
    expect(shifts).toBe(0);
  });

  it('costs more the faster it is played', () => {
    const notes = run([29, 36, 41, 48, 53, 48, 41, 36]);
    const costs = [480, 960, 1920, 3840].map(
      (ticksPerSecond) => fingerLine(notes, bass, CLOSED, { ticksPerSecond, loop: null }).cost,
    );
    expect(costs).toEqual([...costs].sort((one, other) => one - other));
    expect(new Set(costs).size).toBe(costs.length);
  });

  it('follows the policy for open strings', () => {
    const pentatonic = run([33, 36, 38, 40, 43, 40, 38, 36]);
    const count = (openStrings: HandSettings['openStrings']): number => {
      const hand = { ...DEFAULT_HAND, openStrings, highestFret: fret(5) };
      return fingerLine(pentatonic, bass, hand, ONCE).notes.filter((at) => at?.finger === 0).length;
    };
    expect(count('avoid')).toBe(0);
    expect(count('allow')).toBeGreaterThan(0);
    expect(count('prefer')).toBeGreaterThanOrEqual(count('allow'));
  });

  it('follows the system of the hand', () => {
    const fifths = run([36, 43, 36, 43]);
    const system = (name: NonNullable<HandSettings['system']>, rest: Partial<HandSettings> = {}) =>
      written(fingerLine(fifths, bass, { ...CLOSED, system: name, ...rest }, ONCE).notes);
    expect(system('one finger per fret')).toBe('A3.1 D5.3 A3.1 D5.3');
    expect(system('1-2-4')).toBe('A3.1 D5.4 A3.1 D5.4');
    expect(system('1-2-4', { oneTwoFourBelow: fret(3) })).toBe('A3.1 D5.3 A3.1 D5.3');
    expect(system('automatic')).toBe('A3.1 D5.4 A3.1 D5.4');
  });

  it('asks less of a small hand', () => {
    const scale = run([36, 38, 40, 41, 43, 45, 47, 48]);
    const widest = (hand: HandSettings): number => {
      const { notes } = fingerLine(scale, bass, hand, ONCE);
      return Math.max(
        ...notes.map((at, index) => {
          const before = notes[index - 1];
          if (!at || !before || at.position !== before.position) return 0;
          return handSpan(at.fret, before.fret, bass.scaleLength);
        }),
      );
    };
    expect(widest(CLOSED)).toBeGreaterThan(HAND_SPANS.child.reach);
    expect(widest({ ...CLOSED, ...HAND_SPANS.child })).toBeLessThanOrEqual(HAND_SPANS.child.reach);
  });

  it('keeps a place for a note above the highest fret allowed', () => {
    const low = { ...DEFAULT_HAND, highestFret: fret(3) };
    expect(written(fingerLine(run([53]), bass, low, ONCE).notes)).toMatch(/^G10/);
  });

  it('has nothing to say about no notes', () => {
    expect(fingerLine([], bass, DEFAULT_HAND, ONCE)).toEqual({ notes: [], cost: 0, shifts: 0 });
    expect(fingerLine([], bass, DEFAULT_HAND, { ...ONCE, loop: ticks(3840) }).notes).toEqual([]);
  });
});

describe('pins', () => {
  it('are obeyed: string, fret and finger', () => {
    const [first, ...rest] = run([36, 43, 48]);
    if (first === undefined) throw new Error('no note');
    const pinned = [{ ...first, pins: { string: stringNumber(4), finger: 4 as const } }, ...rest];
    expect(fingerLine(pinned, bass, DEFAULT_HAND, ONCE).notes[0]).toEqual({
      string: 4,
      fret: 8,
      finger: 4,
      position: 5,
    });
  });

  it('go beyond the highest fret when the teacher says so', () => {
    const [note] = run([36]);
    if (note === undefined) throw new Error('no note');
    const low = { ...DEFAULT_HAND, highestFret: fret(5) };
    const { notes } = fingerLine([{ ...note, pins: { fret: fret(8) } }], bass, low, ONCE);
    expect(notes[0]).toMatchObject({ string: 4, fret: 8 });
  });

  it('are let go where no place meets them', () => {
    const [note] = run([36]);
    if (note === undefined) throw new Error('no note');
    const { notes } = fingerLine([{ ...note, pins: { string: stringNumber(1) } }], bass, DEFAULT_HAND, ONCE);
    expect(notes[0]).toMatchObject({ string: 3, fret: 3 });
  });
});

describe('the hand gauge', () => {
  it('says what the search will say, in any number of portions', () => {
    fc.assert(
      fc.property(lines(1, 12), fc.nat(12), hands, fc.boolean(), (notes, cut, hand, muted) => {
        const playable = notes.filter(({ midi }) => placesOf(midi, bass).length > 0);
        const gauge = createHandGauge(bass, hand, ONCE.ticksPerSecond, muted);
        const half = gauge.after(gauge.start, playable.slice(0, cut));
        const whole = gauge.after(half, playable.slice(cut));
        expect(whole.cost).toBeCloseTo(fingerLine(playable, bass, hand, { ...ONCE, muted }).cost, 9);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('refuses a note off the neck', () => {
    const gauge = createHandGauge(bass, DEFAULT_HAND, ONCE.ticksPerSecond);
    expect(gauge.after(gauge.start, run([20, 36])).cost).toBe(Number.POSITIVE_INFINITY);
  });
});
