import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiNumber, ticks } from '../../src/core/base';
import { fingerLine, type LineContext, type NoteToFinger, pitchAt, placesOf } from '../../src/core/fretboard';
import { hands, instruments } from './arbitrary';

const BAR = 3840;

const bar = fc.array(
  fc.record({
    midi: fc.integer({ min: 28, max: 50 }),
    rest: fc.boolean(),
    joined: fc.constantFrom(undefined, undefined, 'by hand' as const, 'by slide' as const),
  }),
  { minLength: 1, maxLength: 8 },
);

/** A line over a few bars that come again and again. */
const lines = fc
  .tuple(
    fc.array(bar, { minLength: 1, maxLength: 4 }),
    fc.array(fc.nat({ max: 3 }), { minLength: 2, maxLength: 12 }),
  )
  .map(([kinds, order]) => {
    const chosen = order.map((kind) => kind % kinds.length);
    const notes = chosen.flatMap((kind, index): NoteToFinger[] =>
      (kinds[kind] ?? []).map(({ midi, rest, joined }, place) => ({
        start: ticks(index * BAR + place * 480),
        duration: ticks(rest ? 240 : 480),
        midi: midiNumber(midi),
        ...(joined && { joined }),
      })),
    );
    return { notes, chosen };
  });

const contextOf = (bars: number, loop: boolean, muted: boolean): LineContext => ({
  ticksPerSecond: 1920,
  loop: loop ? ticks(bars * BAR) : null,
  muted,
  bars: Array.from({ length: bars }, (_, index) => ({
    start: ticks(index * BAR),
    end: ticks((index + 1) * BAR),
  })),
});

describe('equal bars', () => {
  it('get equal fingering, over random lines on any instrument', () => {
    let free = 0;
    fc.assert(
      fc.property(
        lines,
        instruments,
        hands,
        fc.boolean(),
        fc.boolean(),
        ({ notes, chosen }, instrument, hand, loop, muted) => {
          const context = contextOf(chosen.length, loop, muted);
          const fingering = fingerLine(notes, instrument, hand, context);
          expect(Number.isFinite(fingering.cost)).toBe(true);
          const readings = new Map<number, string>();
          const readBars = (of: typeof fingering) =>
            chosen.map((_, index) =>
              of.notes
                .filter((_note, at) => Math.floor((notes[at]?.start ?? 0) / BAR) === index)
                .map(
                  (at) => at && `${at.string}/${at.fret} ${at.finger} ${at.finger === 0 ? '' : at.position}`,
                )
                .join(),
            );
          readBars(fingering).forEach((reading, index) => {
            const kind = chosen[index] ?? 0;
            expect(reading).toBe(readings.get(kind) ?? reading);
            readings.set(kind, reading);
          });
          fingering.notes.forEach((at, index) => {
            const midi = notes[index]?.midi ?? midiNumber(0);
            expect(at === null).toBe(placesOf(midi, instrument).length === 0);
            if (at) expect(pitchAt(at, instrument)).toBe(midi);
          });
          const { bars: _, ...unheld } = context;
          const alone = readBars(fingerLine(notes, instrument, hand, unheld));
          if (alone.some((reading, index) => reading !== alone[chosen.indexOf(chosen[index] ?? 0)]))
            free += 1;
        },
      ),
      { seed: 15, numRuns: 150 },
    );
    // Without being held alike, many of these lines finger equal bars differently.
    expect(free).toBeGreaterThan(20);
  });
});
