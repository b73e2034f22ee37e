import type { Alteration, SpelledName } from '../base';

/** The place of a note above a root: step 1 is the root, 3 a third; alteration against the major scale. */
export interface Degree {
  readonly step: 1 | 2 | 3 | 4 | 5 | 6 | 7;
  readonly alteration: Alteration;
}

/** A distance on the staff and in sound: a major third up is 2 steps and 4 half steps. Negative is down. */
export interface Interval {
  readonly steps: number;
  readonly halfSteps: number;
}

export interface ChordTone {
  /** Ninths and sixths are folded into one octave (9 is step 2). */
  readonly degree: Degree;
  readonly name: SpelledName;
}

export type ChordFamily =
  | 'major'
  | 'minor'
  | 'dominant'
  | 'diminished'
  | 'half-diminished'
  | 'augmented'
  | 'suspended';

export interface Chord {
  /** As it is drawn on the sheet, with real ♭ and ♯: `B♭m7`. */
  readonly symbol: string;
  readonly root: SpelledName;
  /** The slash chord's bass note; the root where there is no slash. */
  readonly bass: SpelledName;
  /** The root first, then in order of thirds; the slash bass is not added. */
  readonly tones: readonly ChordTone[];
  readonly family: ChordFamily;
}

/** Major, minor (natural, with the raised seventh where a dominant leads home), and the church modes besides. */
export const MODES = ['major', 'minor', 'dorian', 'phrygian', 'lydian', 'mixolydian', 'locrian'] as const;
export type Mode = (typeof MODES)[number];

export interface Key {
  readonly tonic: SpelledName;
  readonly mode: Mode;
}

/** A chord and how long it sounds, in ticks or any one unit. */
export interface WeightedChord {
  readonly chord: Chord;
  readonly weight: number;
  /** It stands in a pickup, and the music does not begin with it. */
  readonly upbeat?: boolean;
}

/** A guess at the key, the best first; `score` only orders guesses of one call. */
export interface KeyGuess {
  readonly key: Key;
  readonly score: number;
  /** One sentence in plain words, for the teacher. */
  readonly reason: string;
}

export interface Scale {
  /** The trade's name of its kind, or the nearest mode with what differs: `mixolydian ♭6`. */
  readonly kind: string;
  /** Seven names upwards from the root of the chord the scale belongs to. */
  readonly names: readonly SpelledName[];
}
