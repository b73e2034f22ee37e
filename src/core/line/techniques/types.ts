import type { Feel } from '../../feel';
import type { Claim, Scene } from '../claim';
import type { BarModel } from '../model';
import type { Tone } from '../tones';
import type { Level, NoteFunction, Technique } from '../types';
import type { Freedom } from './freedoms';

/** Where in a phrase a technique is best shown: where the phrase answers, breathes or turns, or anywhere. */
export type PhrasePlace = 'anywhere' | 'answer' | 'breath' | 'turn';

/** A bar as the analysis recognises techniques in it. */
export interface Seen {
  readonly bar: BarModel;
  readonly tones: readonly Tone[];
  /** What each note does; null without a chord. */
  readonly functions: readonly (NoteFunction | null)[];
}

/** A technique: everything that the program knows about it. */
export interface TechniqueRow {
  readonly technique: Technique;
  /** The lowest level that has it. */
  readonly from: Level;
  readonly source: string;
  /** What it is, in a few words beside its name: `the next root early`. */
  readonly hint: string;
  /** Whether a new piece in a feel teaches it from the start; the others wait until the teacher asks for them. */
  belongs(feel: Feel): boolean;
  /** Part of every line: it cannot be ruled out. */
  readonly always: boolean;
  readonly allows: readonly Freedom[];
  readonly place: PhrasePlace;
  /** Whether a bar shows it. */
  recognise(seen: Seen): boolean;
  /** Its place in a reason: claims are said in this order, the lowest first. */
  readonly telling: number;
  /** What it has to say about a bar; null for nothing. */
  claim(scene: Scene): Claim | null;
}

export const COMMON_PRACTICE = 'common practice, no source';
