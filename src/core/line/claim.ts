import type { HeardLine } from './hearing';
import type { BarModel, LineModel } from './model';
import type { Tone } from './tones';
import type { NoteAnalysis, Technique } from './types';

/**
 * What a reason says about a bar, as data: `wording` puts it into a sentence, and a test holds each claim against
 * the notes. Notes are given by their index in the bar, ticks from its beginning.
 */
export type Claim =
  | { readonly kind: 'rest'; readonly chord: boolean }
  /** Beat one is silent; `answers` is the written bar before, where that one sounds on its beat one. */
  | { readonly kind: 'silent one'; readonly enters: number; readonly answers: number | null }
  | { readonly kind: 'silence'; readonly beats: number }
  | { readonly kind: 'anticipation'; readonly note: number }
  | { readonly kind: 'octave'; readonly note: number }
  /** The notes from this one to the bar's last go by step in one direction to the next bar's root. */
  | { readonly kind: 'walk'; readonly from: number; readonly target: Tone }
  | { readonly kind: 'passing' | 'neighbour' | 'step'; readonly note: number }
  /** The last note leads to the next bar's root by a half step, a whole step, or as its fifth. */
  | { readonly kind: 'lead'; readonly note: number; readonly target: Tone }
  /** Chord tones under one chord, in a direction where they keep to one. */
  | { readonly kind: 'spells'; readonly notes: readonly number[]; readonly direction: 'up' | 'down' | 'both' }
  /** One note of one chord, alone or repeated. */
  | { readonly kind: 'carries'; readonly note: number }
  | { readonly kind: 'roots'; readonly notes: readonly number[] }
  /** Chord tones under several chords. */
  | { readonly kind: 'change'; readonly notes: readonly number[] }
  | { readonly kind: 'rhythm'; readonly bar: number }
  /** The third, which tells major from minor. */
  | { readonly kind: 'third'; readonly note: number; readonly quality: 'major' | 'minor' }
  | { readonly kind: 'open' };

/** Whether a claim tells another bar by its number. */
export const namesBar = (claim: Claim): boolean =>
  claim.kind === 'rhythm' || (claim.kind === 'silent one' && claim.answers !== null);

/** The analysis of a bar's notes, as far as a claim asks for it. */
export interface Facts {
  readonly notes: readonly NoteAnalysis[];
  readonly techniques: readonly Technique[];
}

/** A bar with everything that a claim about it is made from. */
export interface Scene {
  readonly model: LineModel;
  readonly heard: HeardLine;
  readonly bar: BarModel;
  readonly tones: readonly Tone[];
  readonly facts: Facts;
}
