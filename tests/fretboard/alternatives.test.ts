import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fret, stringNumber, ticks } from '../../src/core/base';
import {
  alternativesFor,
  createInstrument,
  DEFAULT_HAND,
  fingerLine,
  lineAlternatives,
  type NoteRange,
  pitchAt,
  placesOf,
} from '../../src/core/fretboard';
import type { State } from '../../src/core/fretboard/states';
import { hands, instruments, lines, ONCE, roundOf } from './arbitrary';
import { visitAll } from './exhaustive';
import { run, written } from './lines';

const bass = createInstrument();

/** What makes two ways distinct: the places of the stretch, and the finger of its first fretted note. */
function keyOf(
  ways: readonly Pick<State, 'string' | 'fret' | 'finger'>[],
  { first, last }: NoteRange,
): string {
  const inside = ways.slice(first, last + 1);
  const begins = inside.find(({ finger }) => finger !== 0)?.finger ?? 0;
  return `${inside.map(({ string, fret: at }) => `${string}:${at}`).join(' ')} from ${begins}`;
}

describe('other ways to play a stretch', () => {
  it('are the cheapest distinct ones of all', () => {
    fc.assert(
      fc.property(
        lines(1, 3),
        fc.nat(2),
        fc.nat(2),
        instruments,
        hands,
        fc.boolean(),
        (notes, from, length, instrument, hand, loop) => {
          const playable = notes.filter(({ midi }) => placesOf(midi, instrument).length > 0);
          fc.pre(playable.length > from);
          const stretch = { first: from, last: Math.min(playable.length - 1, from + length) };
          const context = roundOf(playable, loop);
          const best = new Map<string, number>();
          visitAll(playable, instrument, hand, context, (ways, cost) => {
            const key = keyOf(ways, stretch);
            best.set(key, Math.min(best.get(key) ?? Number.POSITIVE_INFINITY, cost));
          });
          const costs = [...best.values()].sort((one, other) => one - other).slice(0, 5);
          const found = alternativesFor(playable, stretch, instrument, hand, context, 5);
          expect(found).toHaveLength(costs.length);
          found.forEach(({ fingering }, index) => {
            expect(fingering.cost).toBeCloseTo(costs[index] ?? 0, 9);
          });
          const keys = found.map(({ fingering }) =>
            keyOf(
              fingering.notes.flatMap((note) => (note === null ? [] : [note])),
              stretch,
            ),
          );
          expect(new Set(keys).size).toBe(keys.length);
        },
      ),
      { seed: 6, numRuns: 400 },
    );
  });

  it('sound the same notes and begin with the way played now', () => {
    const notes = run([36, 40, 43, 45, 46, 45, 43, 40]);
    const found = alternativesFor(notes, { first: 0, last: 3 }, bass, DEFAULT_HAND, ONCE);
    expect(found[0]).toMatchObject({ current: true, extraCost: 0 });
    for (const { fingering } of found) {
      expect(fingering.notes.map((at) => at && pitchAt(at, bass))).toEqual(notes.map(({ midi }) => midi));
    }
  });

  it('let the pins of the stretch go and keep the others', () => {
    const far = { string: stringNumber(4), fret: fret(8) };
    const high = { string: stringNumber(2), fret: fret(5) };
    const [one, two, three] = run([36, 38, 43]);
    if (one === undefined || two === undefined || three === undefined) throw new Error('no notes');
    const notes = [{ ...one, pins: far }, two, { ...three, pins: high }];
    const found = alternativesFor(notes, { first: 0, last: 0 }, bass, DEFAULT_HAND, ONCE);
    expect(found[0]).toMatchObject({ current: false });
    expect(found[0]?.extraCost).toBeLessThan(0);
    expect(found[0]?.fingering.notes[0]).toMatchObject({ string: 3, fret: 3 });
    for (const { fingering } of found) expect(fingering.notes[2]).toMatchObject(high);
  });

  it('say what they save and cost', () => {
    const closed = { ...DEFAULT_HAND, openStrings: 'avoid' as const };
    const scale = run([36, 38, 40, 41, 43, 45, 47, 48]);
    const found = alternativesFor(scale, { first: 0, last: 7 }, bass, closed, ONCE);
    expect(found.map(({ fingering, description }) => [written(fingering.notes), description])).toEqual([
      ['A3.2 A5.4 D2.1 D3.2 D5.4 G2.1 G4.3 G5.4', 'Stays in position II: no shift, two stretches.'],
      [
        'E8.2 E10.4 A7.1 A8.2 A10.4 D7.1 D9.3 D10.4',
        'Stays in position VII: no shift, no stretch. Saves two stretches.',
      ],
      [
        'E8.1 E10.3 E12.4 A8.1 A10.3 D7.1 D9.2 D10.3',
        'Stays in position VIII: no shift, one stretch. Saves one stretch.',
      ],
      [
        'E8.1 E10.2 E12.4 A8.1 A10.2 A12.4 D9.1 D10.2',
        'Stays in position IX: no shift, one stretch. Saves one stretch.',
      ],
    ]);
  });

  it('are none for notes that do not lie on the instrument', () => {
    expect(alternativesFor(run([20, 36]), { first: 0, last: 0 }, bass, DEFAULT_HAND, ONCE)).toEqual([]);
  });
});

describe('other ways to play a whole line', () => {
  const notes = run([29, 33, 36, 38, 34, 38, 41, 40, 36, 40, 43, 40, 41, 36, 33, 29]);

  it('lie elsewhere on the neck, best first', () => {
    const found = lineAlternatives(notes, bass, DEFAULT_HAND, { ...ONCE, loop: ticks(16 * 480) });
    expect(found).toHaveLength(4);
    expect(found[0]).toMatchObject({ current: true, extraCost: 0 });
    expect(found.map(({ extraCost }) => extraCost)).toEqual(
      found.map(({ extraCost }) => extraCost).sort((one, other) => one - other),
    );
    expect(found.slice(1).every(({ extraCost }) => extraCost > 0)).toBe(true);
    found.forEach((one, index) => {
      for (const other of found.slice(0, index)) {
        const elsewhere = one.fingering.notes.filter((at, note) => {
          const otherAt = other.fingering.notes[note];
          return at?.string !== otherAt?.string;
        });
        expect(elsewhere.length).toBeGreaterThanOrEqual(4);
      }
    });
  });

  it('cost what pinning them costs', () => {
    for (const { fingering } of lineAlternatives(notes, bass, DEFAULT_HAND, ONCE)) {
      const pinned = notes.map((note, index) => {
        const at = fingering.notes[index];
        return at ? { ...note, pins: { string: at.string, fret: at.fret, finger: at.finger } } : note;
      });
      expect(fingerLine(pinned, bass, DEFAULT_HAND, ONCE).cost).toBeLessThanOrEqual(fingering.cost + 1e-9);
    }
  });
});
