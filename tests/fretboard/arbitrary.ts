import fc from 'fast-check';
import {
  type Finger,
  fret,
  midiNumber,
  type Pins,
  type SpelledPitch,
  stringNumber,
  ticks,
} from '../../src/core/base';
import {
  createInstrument,
  type HandSettings,
  type Instrument,
  type LineContext,
  type NoteToFinger,
  TUNINGS,
  type Tuning,
} from '../../src/core/fretboard';

/** Eighths at 120 beats a minute. */
export const ONCE: LineContext = { ticksPerSecond: 1920, loop: null };

/** Any of the listed tunings, or one of them alone, on necks short and long. */
export const instrumentsTuned = (...tunings: readonly Tuning[]): fc.Arbitrary<Instrument> =>
  fc
    .tuple(fc.constantFrom(...tunings), fc.constantFrom(20, 24), fc.constantFrom(864, 762))
    .map(([{ openStrings }, frets, scale]) => createInstrument(openStrings, frets, scale));

export const instruments = instrumentsTuned(...TUNINGS);

/** Four to six strings at any intervals, 20 to 24 frets, any scale length that a bass is built with. */
export const oddInstruments: fc.Arbitrary<Instrument> = fc
  .record({
    lowest: fc.integer({ min: 21, max: 40 }),
    steps: fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 3, maxLength: 5 }),
    frets: fc.integer({ min: 20, max: 24 }),
    scale: fc.integer({ min: 500, max: 950 }),
  })
  .map(({ lowest, steps, frets, scale }) => {
    const lowestFirst = [lowest];
    for (const step of steps) lowestFirst.push((lowestFirst.at(-1) ?? lowest) + step);
    return createInstrument(lowestFirst.reverse().map(spelled), frets, scale);
  });

const LETTERS_UP = ['C', 'C', 'D', 'D', 'E', 'F', 'F', 'G', 'G', 'A', 'A', 'B'] as const;

/** A MIDI number as a pitch with sharps. */
function spelled(midi: number): SpelledPitch {
  const letter = LETTERS_UP[midi % 12] ?? 'C';
  const alteration = LETTERS_UP[(midi + 11) % 12] === letter ? 1 : 0;
  return { letter, alteration, octave: Math.floor(midi / 12) - 1 };
}

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
        joined: fc.constantFrom(undefined, undefined, 'by hand' as const, 'by slide' as const),
      }),
      { minLength: least, maxLength: most },
    )
    .map((notes) => {
      let start = 0;
      return notes.map(({ midi, length, rest, joined }) => {
        const note = {
          start: ticks(start),
          duration: ticks(length),
          midi: midiNumber(midi),
          ...(joined && { joined }),
        };
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

/** How a line is played: once or round and round, muted or not, the hand kept in a position for some eighths or not. */
interface Asked {
  readonly loop: boolean;
  readonly muted: boolean;
  /** The speed, in ticks a second. */
  readonly speed: number;
  readonly kept: { readonly start: number; readonly length: number; readonly position: number } | null;
}

export const contexts: fc.Arbitrary<Asked> = fc.record({
  loop: fc.boolean(),
  muted: fc.boolean(),
  speed: fc.constantFrom(960, 1920, 3840),
  kept: fc.option(
    fc.record({ start: fc.nat(4), length: fc.nat(4), position: fc.integer({ min: 1, max: 9 }) }),
  ),
});

export function contextOf(notes: readonly NoteToFinger[], asked: Asked) {
  const { loop, muted, speed, kept } = asked;
  const start = ticks((kept?.start ?? 0) * 480);
  const positions =
    kept === null ? [] : [{ start, end: ticks(start + kept.length * 480), position: fret(kept.position) }];
  return { ...roundOf(notes, loop), ticksPerSecond: speed, muted, positions };
}

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
