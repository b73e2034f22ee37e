import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { LETTERS, midiNumber, midiOf, pitchClassOf, type SpelledName } from '../../src/core/base';
import {
  degreeOf,
  formatDegree,
  formatName,
  formatPitch,
  intervalBetween,
  intervalBetweenPitches,
  invertDirection,
  nameOfDegree,
  parseName,
  sameDegree,
  spellMidi,
  transposeName,
  transposePitch,
} from '../../src/core/theory';
import { chord, key, name, pitch, written } from './read';

// Many cases in one test; a busy machine needs its time.
vi.setConfig({ testTimeout: 60_000 });

const FIXED = { seed: 20, numRuns: 300 };
const anyName: fc.Arbitrary<SpelledName> = fc.record({
  letter: fc.constantFrom(...LETTERS),
  alteration: fc.constantFrom(-2, -1, 0, 1, 2),
});
const plainName = anyName.filter(({ alteration }) => Math.abs(alteration) < 2);
/** Intervals as music names them: unison to seventh, diminished to augmented. */
const anyInterval = fc.constantFrom(
  ...[0, 2, 4, 5, 7, 9, 11].flatMap((halfSteps, steps) =>
    [-1, 0, 1].map((change) => ({ steps, halfSteps: halfSteps + change })),
  ),
);

describe('note names', () => {
  it.each([
    ['Bb', 'B♭'],
    ['B♭', 'B♭'],
    ['F#', 'F♯'],
    ['Ebb', 'E♭♭'],
    ['E𝄫', 'E♭♭'],
    ['Fx', 'F♯♯'],
    [' G ', 'G'],
  ])('%j is read and drawn as %s', (text, drawn) => {
    expect(formatName(name(text))).toBe(drawn);
  });

  it.each(['', 'H', 'b', 'Bbbb', 'C4', 'do'])('%j is refused with a sentence', (text) => {
    const read = parseName(text);
    expect(!read.ok && read.problem.message).toMatch(/^A note name .*\.$/);
  });

  it('draws a pitch with the octave it sounds in', () => {
    expect(formatPitch(pitch('Bb1'))).toBe('B♭1');
  });
});

describe('intervals', () => {
  it.each([
    ['A', 'C', 2, 3],
    ['A', 'B#', 1, 3],
    ['F', 'B', 3, 6],
    ['B', 'F', 4, 6],
    ['B', 'C', 1, 1],
    ['C', 'C', 0, 0],
    ['C', 'Cb', 0, -1],
  ])('from %s up to %s are %i steps and %i half steps', (from, to, steps, halfSteps) => {
    expect(intervalBetween(name(from), name(to))).toEqual({ steps, halfSteps });
  });

  it.each([
    ['E1', 2, 3, 'G1'],
    ['E1', 2, 4, 'G♯1'],
    ['B1', 1, 1, 'C2'],
    ['C2', 0, -1, 'C♭2'],
    ['C2', -1, -1, 'B1'],
    ['C♭2', -2, -3, 'A♭1'],
    ['E2', -7, -12, 'E1'],
  ])('%s moved by %i steps and %i half steps is %s', (from, steps, halfSteps, to) => {
    expect(formatPitch(transposePitch(pitch(from), { steps, halfSteps }))).toBe(to);
  });

  it('never writes a triple sharp or flat, and still sounds right', () => {
    expect(formatName(transposeName(name('Fbb'), { steps: 2, halfSteps: 3 }))).toBe('G♭');
    fc.assert(
      fc.property(anyName, anyInterval, (from, interval) => {
        const moved = transposeName(from, interval);
        expect(pitchClassOf(moved)).toBe((pitchClassOf(from) + interval.halfSteps + 12) % 12);
      }),
      FIXED,
    );
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(plainName, anyInterval, (from, interval) => {
        const there = transposeName(from, interval);
        fc.pre(intervalBetween(from, there).steps === interval.steps);
        expect(transposeName(there, invertDirection(interval))).toEqual(from);
      }),
      FIXED,
    );
  });

  it('the interval between two pitches leads from one to the other', () => {
    const anyPitch = fc
      .tuple(anyName, fc.integer({ min: 0, max: 4 }))
      .map(([n, octave]) => ({ ...n, octave }));
    fc.assert(
      fc.property(anyPitch, anyPitch, (from, to) => {
        expect(transposePitch(from, intervalBetweenPitches(from, to))).toEqual(to);
      }),
      FIXED,
    );
  });
});

describe('degrees', () => {
  it.each([
    ['C', 'C', 'R'],
    ['Db', 'C', '♭2'],
    ['D#', 'C', '♯2'],
    ['Eb', 'C', '♭3'],
    ['F#', 'C', '♯4'],
    ['Gb', 'C', '♭5'],
    ['G#', 'C', '♯5'],
    ['Bbb', 'C', '♭♭7'],
    ['Bb', 'C', '♭7'],
    ['Cb', 'Eb', '♭6'],
    ['B', 'Eb', '♯5'],
    ['C#', 'F#', '5'],
    ['A', 'B', '♭7'],
    ['F', 'F#', '7'],
    ['C#', 'C', '♭2'],
  ])('%s over %s is %s', (note, root, drawn) => {
    expect(formatDegree(degreeOf(name(note), name(root)))).toBe(drawn);
  });

  it('the note on the degree of a note is that note again', () => {
    fc.assert(
      fc.property(plainName, plainName, (note, root) => {
        const degree = degreeOf(note, root);
        const again = nameOfDegree(root, degree);
        expect(pitchClassOf(again)).toBe(pitchClassOf(note));
        expect(sameDegree(degreeOf(again, root), degree)).toBe(true);
      }),
      FIXED,
    );
  });
});

describe('spelling a sounding pitch', () => {
  const octave = Array.from({ length: 12 }, (_, index) => midiNumber(36 + index));
  const spelled = (context: Parameters<typeof spellMidi>[1]) =>
    written(octave.map((midi) => spellMidi(midi, context)));

  it.each([
    ['F', 'C D♭ D E♭ E F G♭ G A♭ A B♭ B'],
    ['Ebm', 'C D♭ D E♭ F♭ F G♭ G A♭ A B♭ C♭'],
    ['E', 'C C♯ D D♯ E F F♯ G G♯ A A♯ B'],
  ])('in %s', (where, expected) => {
    const names = spelled({ key: key(where) });
    for (const [index, one] of expected.split(' ').entries()) {
      const own = names.split(' ')[index];
      // Notes outside the key may be written two ways; the key's own may not.
      if (!/♯|♭/.test(one)) continue;
      expect(own, `${where}: ${names}`).toBe(one);
    }
  });

  it('lets the chord lead before the key', () => {
    expect(formatPitch(spellMidi(midiNumber(39), { key: key('F'), chord: chord('B7') }))).toBe('D♯2');
    expect(formatPitch(spellMidi(midiNumber(39), { key: key('F'), chord: chord('F7') }))).toBe('E♭2');
    expect(formatPitch(spellMidi(midiNumber(35), { key: key('Ebm'), chord: chord('Abm') }))).toBe('C♭2');
  });

  it('raises with sharps and lowers with flats', () => {
    expect(formatPitch(spellMidi(midiNumber(30), { key: key('C'), direction: 'up' }))).toBe('F♯1');
    expect(formatPitch(spellMidi(midiNumber(30), { key: key('C'), direction: 'down' }))).toBe('G♭1');
  });

  it('always sounds as asked', () => {
    const keys = ['C', 'F', 'B', 'Gb', 'F#', 'Cb', 'C#', 'Abm', 'A#m', 'Em'].map(key);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 127 }),
        fc.constantFrom(...keys),
        fc.constantFrom('up', 'down'),
        (midi, where, direction) => {
          const number = midiNumber(midi);
          expect(midiOf(spellMidi(number, { key: where, direction }))).toBe(number);
          expect(midiOf(spellMidi(number, { key: where }))).toBe(number);
        },
      ),
      FIXED,
    );
  });
});
