import fc from 'fast-check';
import { type Finger, fret, midiNumber, type Pins, stringNumber, ticks } from '../../src/core/base';
import {
  createInstrument,
  type HandSettings,
  type LineContext,
  type NoteToFinger,
  TUNINGS,
} from '../../src/core/fretboard';

/** Eighths at 120 beats a minute. */
export const ONCE: LineContext = { ticksPerSecond: 1920, loop: null };

export const instruments = fc
  .tuple(fc.constantFrom(...TUNINGS), fc.constantFrom(20, 24), fc.constantFrom(864, 762))
  .map(([{ openStrings }, frets, scale]) => createInstrument(openStrings, frets, scale));

export const hands: fc.Arbitrary<HandSettings> = fc.record({
  openStrings: fc.constantFrom('avoid', 'allow', 'prefer'),
  comfortableSpan: fc.constantFrom(90, 105),
  reach: fc.constantFrom(110, 130),
  highestFret: fc.constantFrom(fret(3), fret(7), fret(12)),
  system: fc.constantFrom('one finger per fret', '1-2-4', 'automatic'),
  oneTwoFourBelow: fc.constantFrom(fret(5), fret(24)),
});

export const lines = (least: number, most: number): fc.Arbitrary<NoteToFinger[]> =>
  fc
    .array(
      fc.record({
        midi: fc.integer({ min: 20, max: 60 }),
        length: fc.constantFrom(240, 480, 960),
        rest: fc.constantFrom(0, 0, 480),
      }),
      { minLength: least, maxLength: most },
    )
    .map((notes) => {
      let start = 0;
      return notes.map(({ midi, length, rest }) => {
        const note = { start: ticks(start), duration: ticks(length), midi: midiNumber(midi) };
        start += length + rest;
        return note;
      });
    });

export const roundOf = (notes: readonly NoteToFinger[], loop: boolean): LineContext => {
  const last = notes.at(-1);
  return {
    ticksPerSecond: 1920,
    loop: loop && last !== undefined ? ticks(last.start + last.duration) : null,
  };
};

const pins: fc.Arbitrary<Pins> = fc.record(
  {
    string: fc.integer({ min: 1, max: 4 }).map(stringNumber),
    fret: fc.integer({ min: 0, max: 12 }).map(fret),
    finger: fc.constantFrom<Finger[]>(0, 1, 2, 3, 4),
  },
  { requiredKeys: [] },
);

/** Lines of which the teacher has pinned some notes, now and then in a way that cannot be met. */
export const pinnedLines = (least: number, most: number): fc.Arbitrary<NoteToFinger[]> =>
  fc
    .tuple(lines(least, most), fc.array(fc.option(pins), { minLength: most, maxLength: most }))
    .map(([notes, own]) =>
      notes.map((note, index) => {
        const pinned = own[index] ?? null;
        return pinned === null ? note : { ...note, pins: pinned };
      }),
    );
