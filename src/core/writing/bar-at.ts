import { type LineNote, midiOf, pitchClassOf, type SpelledName, type SpelledPitch } from '../base';
import { untied } from './arrange';
import { type Desk, harmonyAt } from './context';
import { type Harmony, nearest } from './pitch';
import type { Refusal } from './types';

/** A bar that is asked to become something, with its notes. */
export interface BarAt {
  readonly desk: Desk;
  readonly bar: number;
  readonly notes: readonly LineNote[];
  readonly length: number;
  readonly beat: number;
}

/** What becomes of the notes, and what is said about it; or why nothing does. */
export type Outcome =
  | { readonly notes: readonly LineNote[]; readonly detail: string }
  | { readonly why: Refusal };

export const harmonyOf = ({ desk, bar }: BarAt, tick: number): Harmony => harmonyAt(desk, { bar, tick });

export const sounds = (one: SpelledName, other: SpelledName): boolean =>
  pitchClassOf(one) === pitchClassOf(other);

/** Another pitch in the same place. */
export const at = (note: LineNote, pitch: SpelledPitch): LineNote => {
  const { pins: _, ...free } = note;
  return { ...untied(free), pitch };
};

/** The nearest of some names to a pitch, on the instrument; null where none lies on it. */
export function nearestOf(desk: Desk, names: readonly SpelledName[], to: SpelledPitch): SpelledPitch | null {
  const aim = midiOf(to);
  return names.reduce<SpelledPitch | null>((best, name) => {
    const pitch = nearest(name, aim, desk.instrument);
    if (pitch === null) return best;
    return best === null || Math.abs(midiOf(pitch) - aim) < Math.abs(midiOf(best) - aim) ? pitch : best;
  }, null);
}
