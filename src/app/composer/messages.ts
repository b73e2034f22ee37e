import type { AT_SIGHT } from '../../core/asking';
import type {
  Composition,
  Finding,
  KeyChoice,
  KeyHand,
  PieceRegrade,
  RankedTake,
} from '../../core/composing';
import type { Lesson } from '../../core/lesson';
import type { Level } from '../../core/line';

/** What can be made for the line of a piece. */
export type Deed =
  | 'compose line'
  | 'another take'
  | 'compose several takes'
  /** Of the room `asking`: behind the piece. */
  | `add ${(typeof AT_SIGHT)[number]} bars to read at sight`;

/** What the page asks of the worker that composes and checks. */
export type ComposerJob =
  | { readonly kind: 'compose'; readonly deed: Deed; readonly lesson: Lesson; readonly pieceId: string }
  | { readonly kind: 'check'; readonly lesson: Lesson }
  | {
      readonly kind: 'brought';
      readonly before: Lesson;
      readonly after: Lesson;
      readonly pieceId: string;
      readonly bar: number;
    }
  /** A finding, by its place in the last check's list. */
  | { readonly kind: 'repair'; readonly finding: number }
  | { readonly kind: 'explain' | 'rank takes'; readonly lesson: Lesson; readonly pieceId: string }
  | { readonly kind: 'regrade'; readonly lesson: Lesson; readonly pieceId: string; readonly level: Level }
  | { readonly kind: 'keys'; readonly lesson: Lesson; readonly pieceId: string; readonly how: KeyHand };

/** A finding as it crosses to the page: its repair is looked for by another question. */
export interface CheckedFinding extends Omit<Finding, 'repair'> {
  /** Whether there is a repair to look for. */
  readonly mendable: boolean;
}

/** A repair that was found, with the lesson as it would be after it. */
export interface FoundRepair {
  /** What its button says: a verb and its object. */
  readonly label: string;
  readonly lesson: Lesson;
}

/** A take as it crosses to the page, which has its notes. */
export interface ComparedTake extends Omit<RankedTake, 'take'> {
  readonly takeId: string;
}

export type ComposerAnswer =
  | { readonly kind: 'composition'; readonly composition: Composition }
  | { readonly kind: 'findings'; readonly findings: readonly CheckedFinding[] }
  | { readonly kind: 'brought'; readonly messages: readonly string[] }
  | { readonly kind: 'repair'; readonly repair: FoundRepair | null }
  | { readonly kind: 'explanation'; readonly sentences: readonly string[] }
  | { readonly kind: 'ranking'; readonly takes: readonly ComparedTake[] }
  | { readonly kind: 'regraded'; readonly regrade: PieceRegrade | null }
  | { readonly kind: 'keys'; readonly keys: readonly KeyChoice[] }
  | { readonly kind: 'called off' }
  | { readonly kind: 'failed' };
