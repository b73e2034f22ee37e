import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fret, midiNumber, stringNumber, ticks } from '../../src/core/base';
import {
  createInstrument,
  DEFAULT_HAND,
  fingerLine,
  pinsOf,
  placesOf,
  transposePins,
} from '../../src/core/fretboard';
import { lines, ONCE } from './arbitrary';
import { run, written } from './lines';

const bass = createInstrument();

describe('pins of a fingered note', () => {
  it('hold it where it is', () => {
    fc.assert(
      fc.property(lines(1, 8), (notes) => {
        const playable = notes.filter(({ midi }) => placesOf(midi, bass).length > 0);
        const free = fingerLine(playable, bass, DEFAULT_HAND, ONCE);
        const pinned = playable.map((note, index) => {
          const at = free.notes[index] ?? null;
          return at === null ? note : { ...note, pins: pinsOf(at) };
        });
        const held = fingerLine(pinned, bass, DEFAULT_HAND, ONCE);
        expect(written(held.notes)).toBe(written(free.notes));
        expect(held.cost).toBeCloseTo(free.cost, 9);
      }),
      { seed: 8, numRuns: 100 },
    );
  });
});

describe('transposed pins', () => {
  const A3 = { string: stringNumber(3), fret: fret(3) };
  it.each([
    ['move along the neck with the note', { ...A3, finger: 2 }, 2, { string: 3, fret: 5, finger: 2 }],
    ['let the finger go on an open string', { ...A3, finger: 2 }, -3, { string: 3, fret: 0 }],
    ['end where the string ends', A3, -4, null],
    ['end where the frets end', A3, 18, null],
    ['keep a string alone', { string: stringNumber(3) }, 4, { string: 3 }],
    ['keep a finger alone', { finger: 4 }, 1, { finger: 4 }],
    ['move a fret alone', { fret: fret(8) }, 2, { fret: 10 }],
  ] as const)('%s', (_, pins, halfSteps, expected) => {
    expect(transposePins(pins, midiNumber(36), midiNumber(36 + halfSteps), bass)).toEqual(expected);
  });
});

describe('a pinned position', () => {
  it('keeps the hand there for its stretch of the line', () => {
    const positions = [{ start: ticks(0 * 480), end: ticks(4 * 480), position: fret(5) }];
    const { notes } = fingerLine(run([36, 40, 43, 45, 29, 33, 36, 29]), bass, DEFAULT_HAND, {
      ...ONCE,
      positions,
    });
    expect(notes.slice(0, 4).map((at) => at?.position)).toEqual([5, 5, 5, 5]);
    expect(notes.at(-1)?.position).not.toBe(5);
  });

  it('gives way to the pins of a note', () => {
    const positions = [{ start: ticks(0 * 480), end: ticks(2 * 480), position: fret(5) }];
    const [first, second] = run([36, 38]);
    if (first === undefined || second === undefined) throw new Error('no notes');
    const pinned = [{ ...first, pins: { string: stringNumber(3), fret: fret(3) } }, second];
    const { notes } = fingerLine(pinned, bass, DEFAULT_HAND, { ...ONCE, positions });
    expect(notes[0]).toMatchObject({ string: 3, fret: 3 });
    expect(notes[1]?.position).toBe(5);
  });
});
