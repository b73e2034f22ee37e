import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import {
  deriveSheet,
  type Lesson,
  type LineSheet,
  linePiece,
  sampleLesson,
  transposeBy,
  transposeLesson,
  transposeTo,
} from '../../src/core/lesson';
import { describeKey, formatName, formatPitch, parseName } from '../../src/core/theory';

const samples = [sampleLesson(0, 'test'), sampleLesson(1, 'test')];

function sheet(lesson: Lesson): LineSheet {
  const piece = linePiece(lesson, 'piece-1');
  const derived = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (derived?.kind !== 'line') throw new Error('the line piece is gone');
  return derived;
}

const degrees = (lesson: Lesson) => sheet(lesson).bars.map((bar) => bar.notes.map((note) => note.degreeText));
const names = (lesson: Lesson) =>
  sheet(lesson).bars.map((bar) => bar.notes.map(({ note }) => formatName(note.pitch)));

function to(lesson: Lesson, tonic: string): Lesson {
  const name = parseName(tonic);
  if (!name.ok) throw new Error(tonic);
  return transposeTo(lesson, 'piece-1', name.value);
}

describe('transposing a lesson', () => {
  it.each(['G', 'A', 'B♭', 'D', 'E♭', 'F♯', 'D♭'])(
    'moves chords, key and notes of the major sample to %s',
    (tonic) => {
      const moved = to(samples[0] as Lesson, tonic);
      expect(describeKey(sheet(moved).key)).toBe(`${tonic} major`);
      expect(degrees(moved)).toEqual(degrees(samples[0] as Lesson));
      expect(sheet(moved).bars.every((bar) => bar.notes.every((note) => note.fingered !== null))).toBe(true);
    },
  );

  it.each([
    [1, 'G♭ major'],
    [-1, 'E major'],
    [2, 'G major'],
    [4, 'A major'],
    [-4, 'D♭ major'],
    [6, 'B major'],
    [12, 'F major'],
  ])('moves the major sample by %i half steps, to %s', (halfSteps, key) => {
    const sample = samples[0] as Lesson;
    const moved = transposeBy(sample, 'piece-1', halfSteps);
    expect(describeKey(sheet(moved).key)).toBe(key);
    expect(degrees(moved)).toEqual(degrees(sample));
    const sounding = (lesson: Lesson) =>
      sheet(lesson).bars.flatMap((bar) => bar.notes.map(({ note }) => midiOf(note.pitch)));
    expect(sounding(moved)).toEqual(sounding(sample).map((midi) => midi + halfSteps));
    expect(transposeBy(moved, 'piece-1', -halfSteps)).toEqual(sample);
  });

  it('spells the flats of E♭ minor, C♭ among them', () => {
    const moved = to(samples[1] as Lesson, 'E♭');
    expect(describeKey(sheet(moved).key)).toBe('E♭ minor');
    expect(names(moved).flat()).not.toContain('B');
  });

  it('gives the same lesson when moved there and back', () => {
    const interval = fc.constantFrom(
      { steps: 1, halfSteps: 2 },
      { steps: 1, halfSteps: 1 },
      { steps: 2, halfSteps: 3 },
      { steps: 3, halfSteps: 5 },
      { steps: -1, halfSteps: -1 },
      { steps: -2, halfSteps: -4 },
      { steps: -3, halfSteps: -5 },
    );
    fc.assert(
      fc.property(fc.constantFrom(...samples), interval, (lesson, move) => {
        const back = { steps: -move.steps, halfSteps: -move.halfSteps };
        expect(transposeLesson(transposeLesson(lesson, move), back)).toEqual(lesson);
      }),
      { seed: 20260705, numRuns: 40 },
    );
  });

  it('goes the other way round where the nearer one leaves the neck', () => {
    const low = to(samples[0] as Lesson, 'C');
    const lowest = Math.min(
      ...sheet(low).bars.flatMap((bar) => bar.notes.map(({ note }) => midiOf(note.pitch))),
    );
    expect(lowest, formatPitch({ letter: 'E', alteration: 0, octave: 1 })).toBeGreaterThanOrEqual(28);
  });
});
