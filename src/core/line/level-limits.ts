import type { Level } from './types';

/** What a teaching level lets a line ask of a player. The table is a common one of the trade, with no source. */
export interface LevelLimits {
  /** The row in a few words, for who chooses a level. */
  readonly words: string;
  /** Steps of the scale above the chord's root (1 the root … 7) that the line may use. */
  readonly steps: ReadonlySet<number>;
  readonly highestFret: number;
  /** Most notes a second, averaged over a bar. */
  readonly notesPerSecond: number;
  /** Half-step approaches from outside the scale. */
  readonly halfSteps: boolean;
  /** The highest note of the line: G2 (43) for beginners, A2, B2, C3 (48) later. */
  readonly highestMidi: number;
}

export const LIMITS: Readonly<Record<Level, LevelLimits>> = {
  0: {
    words: 'roots',
    steps: new Set([1]),
    highestFret: 3,
    notesPerSecond: 2,
    halfSteps: false,
    highestMidi: 43,
  },
  1: {
    words: 'root, fifth, octave',
    steps: new Set([1, 5]),
    highestFret: 5,
    notesPerSecond: 3,
    halfSteps: false,
    highestMidi: 45,
  },
  2: {
    words: 'with thirds, one shift',
    steps: new Set([1, 3, 5]),
    highestFret: 5,
    notesPerSecond: 4,
    halfSteps: false,
    highestMidi: 47,
  },
  3: {
    words: 'with scale steps',
    steps: new Set([1, 2, 3, 4, 5, 6, 7]),
    highestFret: 7,
    notesPerSecond: 5,
    halfSteps: false,
    highestMidi: 47,
  },
  4: {
    words: 'sixths, sevenths, approaches',
    steps: new Set([1, 2, 3, 4, 5, 6, 7]),
    highestFret: 9,
    notesPerSecond: 6,
    halfSteps: true,
    highestMidi: 48,
  },
  5: {
    words: 'chromatic, syncopated',
    steps: new Set([1, 2, 3, 4, 5, 6, 7]),
    highestFret: 12,
    notesPerSecond: 8,
    halfSteps: true,
    highestMidi: 48,
  },
};

export const levelLimits = (level: Level): LevelLimits => LIMITS[level];
