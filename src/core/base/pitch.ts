import { type MidiNumber, midiNumber } from './units';

export const LETTERS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'] as const;
export type Letter = (typeof LETTERS)[number];

/** Half steps away from the letter: −2 double flat … 2 double sharp. */
export type Alteration = -2 | -1 | 0 | 1 | 2;

/** A note name without an octave: what a chord, a key or a scale is made of. */
export interface SpelledName {
  readonly letter: Letter;
  readonly alteration: Alteration;
}

/**
 * A pitch as it sounds, spelled: the open E string of a bass is E1 (MIDI 28). Octaves change at C, so C♭2 is
 * the B below C2. Bass notation writes it an octave higher; only the score does that.
 */
export interface SpelledPitch extends SpelledName {
  readonly octave: number;
}

const HALF_STEPS: Readonly<Record<Letter, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/** Half steps above C of the same octave, unreduced: C♭ is −1, B♯ is 12. */
export const halfStepsAboveC = (name: SpelledName): number => HALF_STEPS[name.letter] + name.alteration;

/** Pitch class, 0 (C) to 11 (B). */
export const pitchClassOf = (name: SpelledName): number => (halfStepsAboveC(name) + 12) % 12;

/** @throws RangeError when the pitch lies outside MIDI's 0–127. */
export const midiOf = (pitch: SpelledPitch): MidiNumber =>
  midiNumber((pitch.octave + 1) * 12 + halfStepsAboveC(pitch));

/** Steps of the staff above C0, whatever the alteration: what a notehead's height depends on. */
export const staffStepOf = (pitch: SpelledPitch): number => pitch.octave * 7 + LETTERS.indexOf(pitch.letter);

export const sameName = (one: SpelledName, other: SpelledName): boolean =>
  one.letter === other.letter && one.alteration === other.alteration;

export const samePitch = (one: SpelledPitch, other: SpelledPitch): boolean =>
  sameName(one, other) && one.octave === other.octave;
