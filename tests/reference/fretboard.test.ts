import { describe, expect, it } from 'vitest';
import { frequencyOf, fret, midiNumber, midiOf, stringNumber } from '../../src/core/base';
import {
  createInstrument,
  DEFAULT_HAND,
  fingerLine,
  fretDistance,
  handSpan,
  type LineContext,
  type NoteToFinger,
  notesInPosition,
  placesOf,
  TUNINGS,
} from '../../src/core/fretboard';
import { parseName } from '../../src/core/theory';
import { run, written } from '../fretboard/lines';

const bass = createInstrument();
/** A movable shape has no open strings. */
const CLOSED = { ...DEFAULT_HAND, openStrings: 'avoid' as const };
/** Eighths at 120, 90 and 60 beats a minute. */
const SPEEDS: readonly LineContext[] = [1920, 1440, 960].map((ticksPerSecond) => ({
  ticksPerSecond,
  loop: null,
}));

describe('pitch and neck', () => {
  // ISO 16:1975 (A4 = 440 Hz) with twelve-tone equal temperament; MIDI numbers as in the MIDI 1.0 specification.
  it.each([
    ['six-strings', 1, 48, 130.813],
    ['six-strings', 2, 43, 97.999],
    ['six-strings', 3, 38, 73.416],
    ['six-strings', 4, 33, 55.0],
    ['six-strings', 5, 28, 41.203],
    ['six-strings', 6, 23, 30.868],
    ['five-strings', 5, 23, 30.868],
    ['standard', 1, 43, 97.999],
    ['standard', 2, 38, 73.416],
    ['standard', 3, 33, 55.0],
    ['standard', 4, 28, 41.203],
  ])('%s: string %i is MIDI %i, %f Hz', (id, string, midi, hertz) => {
    const open = TUNINGS.find((tuning) => tuning.id === id)?.openStrings[string - 1];
    expect(open && midiOf(open)).toBe(midi);
    expect(frequencyOf(midiNumber(midi))).toBeCloseTo(hertz, 3);
  });

  // The rule of equal temperament, d = L · (1 − 2^(−n/12)), worked out for 34 inches (863.6 mm).
  it.each([
    [1, 48.47],
    [2, 94.22],
    [3, 137.402],
    [5, 216.631],
    [7, 287.216],
    [9, 350.1],
    [12, 431.8],
    [17, 540.116],
    [24, 647.7],
  ])('fret %i of a 34-inch neck lies %f mm from the nut', (at, millimetres) => {
    expect(fretDistance(at, 863.6)).toBeCloseTo(millimetres, 3);
  });

  // The same rule: spans of four frets on a 34-inch and a 30-inch neck, in whole millimetres.
  it.each([
    [1, 130, 114],
    [3, 116, 102],
    [5, 103, 91],
    [7, 92, 81],
    [9, 82, 72],
  ])('four frets from fret %i span %i mm, or %i mm on a short neck', (from, long, short) => {
    expect(Math.round(handSpan(fret(from), fret(from + 3), 863.6))).toBe(long);
    expect(Math.round(handSpan(fret(from), fret(from + 3), 762))).toBe(short);
  });
});

/**
 * Where the intervals lie from a root, as (strings up, frets up): common practice, no source, and plain arithmetic
 * on strings in fourths; the half steps are those of the interval's definition.
 */
const INTERVALS: readonly (readonly [name: string, strings: number, frets: number, halfSteps: number])[] = [
  ['major third', 1, -1, 4],
  ['major third on its string', 0, 4, 4],
  ['minor third', 0, 3, 3],
  ['minor third on the next string', 1, -2, 3],
  ['fifth', 1, 2, 7],
  ['minor seventh', 2, 0, 10],
  ['octave', 2, 2, 12],
  ['sixth', 2, -1, 9],
  ['major seventh', 2, 1, 11],
  ['flat fifth', 1, 1, 6],
  ['sharp fifth', 1, 3, 8],
  ['fifth two strings up', 2, -3, 7],
  ['fifth a fourth below', -1, 0, -5],
  ['third below a major root', -1, -3, -8],
  ['third below a major root, nearer', -2, 2, -8],
  ['third below a minor root', -1, -4, -9],
  ['third below a minor root, nearer', -2, 1, -9],
];

describe.each(INTERVALS)('a %s', (_, strings, frets, halfSteps) => {
  it.each(['standard', 'whole-step-down', 'five-strings', 'six-strings'])('lies there: %s', (id) => {
    const instrument = createInstrument(TUNINGS.find((tuning) => tuning.id === id)?.openStrings, 24);
    let found = 0;
    instrument.openStrings.forEach((open, index) => {
      const string = index + 1 - strings;
      if (string < 1 || string > instrument.openStrings.length) return;
      for (let root = 4; root <= 12; root += 1) {
        const places = placesOf(midiNumber(midiOf(open) + root + halfSteps), instrument);
        expect(places).toContainEqual({ string, fret: root + frets });
        found += 1;
      }
    });
    expect(found).toBeGreaterThan(8);
  });
});

// Bandwagon Music Studios, Bass Level 1, p. 10: in position n finger k plays fret n + k − 1.
describe('a position', () => {
  it.each([4, 5, 7, 9])('%i: one finger per fret on every string', (position) => {
    const chromatic = ['C', 'C♯', 'D', 'D♯', 'E', 'F', 'F♯', 'G', 'G♯', 'A', 'A♯', 'B'].flatMap((text) => {
      const name = parseName(text);
      return name.ok ? [name.value] : [];
    });
    const notes = notesInPosition(chromatic, fret(position), bass, CLOSED);
    expect(notes).toHaveLength(16);
    for (const note of notes) expect(note.fret).toBe(position + note.finger - 1);
  });
});

/** Notes given as (strings up, frets up) from a root, the root pinned to its place and nothing else. */
function shape(string: number, root: number, steps: readonly (readonly [number, number])[]): NoteToFinger[] {
  const open = bass.openStrings[string - 1];
  if (open === undefined) throw new Error(`no string ${string}`);
  const notes = run(steps.map(([strings, frets]) => midiOf(open) + root + 5 * strings + frets));
  return notes.map((note, index) =>
    index === 0 ? { ...note, pins: { string: stringNumber(string), fret: fret(root) } } : note,
  );
}

const places = (string: number, root: number, steps: readonly (readonly [number, number])[]) =>
  steps.map(([strings, frets]) => ({ string: string - strings, fret: root + frets }));

const roots = [4, 3].flatMap((string) =>
  Array.from({ length: 9 }, (_, index) => ({ string, root: index + 2, name: 'GDAE'[string - 1] })),
);

describe.each(SPEEDS)('the shapes of the trade, $ticksPerSecond ticks a second', (context) => {
  const fingered = (notes: readonly NoteToFinger[]) => fingerLine(notes, bass, CLOSED, context).notes;

  // Fingers: common practice, no source. Position n, finger k plays fret n + k − 1: Bandwagon Music Studios, Bass Level 1, p. 10.
  const MAJOR = [
    [0, 0],
    [1, -1],
    [1, 2],
    [2, 2],
  ] as const;
  it.each(roots)('major arpeggio from fret $root of the $name string', ({ string, root }) => {
    const notes = fingered(shape(string, root, MAJOR));
    expect(notes).toMatchObject(places(string, root, MAJOR));
    expect(notes.map((note) => note?.finger)).toEqual([2, 1, 4, 4]);
  });

  // Common practice, no source: `1-4 | 3 | 3`, or the little finger on the octave.
  const MINOR = [
    [0, 0],
    [0, 3],
    [1, 2],
    [2, 2],
  ] as const;
  it.each(roots.filter(({ root }) => root <= 9))(
    'minor arpeggio from fret $root of the $name string',
    ({ string, root }) => {
      const notes = fingered(shape(string, root, MINOR));
      expect(notes).toMatchObject(places(string, root, MINOR));
      expect(notes.map((note) => note?.finger).slice(0, 3)).toEqual([1, 4, 3]);
    },
  );

  // "Learning the Electric Bass: Major Scales": `2-4 | 1-2-4 | 1-3-4`, the same shape from almost every fret.
  const SCALE = [
    [0, 0],
    [0, 2],
    [1, -1],
    [1, 0],
    [1, 2],
    [2, -1],
    [2, 1],
    [2, 2],
  ] as const;
  it.each(roots)('major scale from fret $root of the $name string', ({ string, root }) => {
    const notes = fingered(shape(string, root, SCALE));
    expect(notes).toMatchObject(places(string, root, SCALE));
    expect(notes.map((note) => note?.finger)).toEqual([2, 4, 1, 2, 4, 1, 3, 4]);
  });

  // Common practice, no source: natural minor from the first finger, `1-3-4 | 1-3-4 | 1-3`.
  const NATURAL_MINOR = [
    [0, 0],
    [0, 2],
    [0, 3],
    [1, 0],
    [1, 2],
    [1, 3],
    [2, 0],
    [2, 2],
  ] as const;
  it.each(roots.filter(({ root }) => root <= 9))(
    'natural minor scale from fret $root of the $name string',
    ({ string, root }) => {
      const [first, ...rest] = shape(string, root, NATURAL_MINOR);
      if (first === undefined) throw new Error('no root');
      const notes = fingered([{ ...first, pins: { ...first.pins, finger: 1 as const } }, ...rest]);
      expect(notes).toMatchObject(places(string, root, NATURAL_MINOR));
      expect(notes.map((note) => note?.finger)).toEqual([1, 3, 4, 1, 3, 4, 1, 3]);
    },
  );

  // Common practice, no source: the fifth lies two strings up at (2, −3) when the hand is there already.
  const FIFTH = [
    [1, -3],
    [0, 0],
    [2, -3],
    [0, 0],
  ] as const;
  it.each(roots.filter(({ root }) => root >= 4))(
    'fifth two strings up, root at fret $root of the $name string',
    (at) => {
      const [first, ...rest] = places(at.string, at.root, FIFTH);
      const midis = FIFTH.map(([strings, frets]) => 43 - 5 * (at.string - 1) + at.root + 5 * strings + frets);
      const notes = run(midis).map((note, index) =>
        index === 0
          ? {
              ...note,
              pins: { string: stringNumber(at.string - 1), fret: fret(at.root - 3), finger: 1 as const },
            }
          : note,
      );
      expect(fingered(notes)).toMatchObject([{ ...first, finger: 1 }, ...rest]);
    },
  );
});

describe('published fingerings', () => {
  // "Learning the Electric Bass: Major Scales": C major, one octave, one finger per fret.
  it('C major from fret 3 of the A string', () => {
    for (const context of SPEEDS) {
      const { notes } = fingerLine(run([36, 38, 40, 41, 43, 45, 47, 48]), bass, CLOSED, context);
      expect(written(notes)).toBe('A3.2 A5.4 D2.1 D3.2 D5.4 G2.1 G4.3 G5.4');
    }
  });

  // Wheat's BassBook, Book Two (frets without fingers), from the given string on.
  it.each([
    ['C Ionian', [36, 38, 40, 41, 43, 45, 47, 48], 'A3 A5 D2 D3 D5 G2 G4 G5'],
    ['D Dorian', [38, 40, 41, 43, 45, 47, 48, 50], 'A5 A7 A8 D5 D7 G4 G5 G7'],
    ['E Phrygian', [40, 41, 43, 45, 47, 48, 50, 52], 'A7 A8 A10 D7 D9 D10 G7 G9'],
  ])('%s from the A string', (_, midis, places) => {
    for (const context of SPEEDS) {
      const notes = run(midis).map((note, index) =>
        index === 0 ? { ...note, pins: { string: stringNumber(3) } } : note,
      );
      const fingered = fingerLine(notes, bass, CLOSED, context).notes;
      expect(written(fingered).replace(/\.\d/gu, '')).toBe(places);
    }
  });

  // "Learning the Electric Bass: Major Scales", slides 10 to 13: E major from the open string, first six notes,
  // fingers 0 2 4 0 2. The sixth finger, 4, is inferred: its fret, 4, is printed, its finger is not legible in the
  // copy that was read.
  it('E major from the open string', () => {
    for (const context of SPEEDS) {
      const { notes } = fingerLine(run([28, 30, 32, 33, 35, 37]), bass, DEFAULT_HAND, context);
      expect(written(notes)).toBe('E0.0 E2.2 E4.4 A0.0 A2.2 A4.4');
    }
  });

  // F. Simandl, New Method for the Double Bass (from memory, no page; the American School of Double Bass, asodb.com,
  // states the same): fingers 1 and 4 span a whole step, 2 takes the half step between.
  it('1-2-4 in half position', () => {
    const hand = { ...CLOSED, system: '1-2-4' as const };
    for (const context of SPEEDS) {
      expect(written(fingerLine(run([29, 30, 31]), bass, hand, context).notes)).toBe('E1.1 E2.2 E3.4');
      const chromatic = fingerLine(run([29, 30, 31, 32, 33, 34, 35, 36]), bass, hand, context).notes;
      expect(chromatic.every((note) => note?.finger !== 3)).toBe(true);
    }
  });
});
