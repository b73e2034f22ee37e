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

/** A chord's share of a bar that holds several, as the search asks what it shows. */
export interface SeenPart extends Seen {
  /** It begins the bar. */
  readonly opens: boolean;
  /** The first note of the share after it in its bar; null where the bar ends with it. */
  readonly next: Tone | null;
}

/** A contour over a chord before its leads have pitches. */
export interface Drawn {
  /** Half steps above its anchor of the notes that have a pitch. */
  readonly offsets: readonly number[];
  /** For each of these its pitch class, 0–11, and whether the chord holds it. */
  readonly classes: readonly number[];
  readonly members: readonly boolean[];
  /** Its beat one is silent. */
  readonly silentOne: boolean;
  /** Its longest silence as a share of the bar. */
  readonly longestSilence: number;
}

/** What a lead can be asked to bring: a scale step, an approach from outside the chord, the next root early. */
export type LeadWish = 'step' | 'approach' | 'early';

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
  /** Whether a chord's share of a bar shows it; never where it is told of whole bars. */
  recognisePart(part: SeenPart): boolean;
  /**
   * Whether a contour can come to show it by the notes that have a pitch, so that what is asked for is not dropped
   * as dear. What leads bring is known by `lead`.
   */
  mayShow(drawn: Drawn): boolean;
  /** What a lead is asked to bring where the bar shall show it; null where leads have no part in it. */
  readonly lead: LeadWish | null;
  /** Its place in a reason: claims are said in this order, the lowest first. */
  readonly telling: number;
  /** What it has to say about a bar; null for nothing. */
  claim(scene: Scene): Claim | null;
}

export const COMMON_PRACTICE = 'common practice, no source';
