import type { PhraseRole } from '../../feel';
import type { Option } from '../options';
import type { BarRhythm } from '../rhythm';

/** What a bar plays in rhythm and role, before any pitch is chosen. */
export interface PlannedBar {
  readonly role: PhraseRole;
  /** Null for a bar that rests, and for one whose notes are given. */
  readonly rhythm: BarRhythm | null;
}

/** How the bars of a phrase relate: the statement comes back in every second bar, or in all but the last. */
export type Form = 'answered' | 'carried';
/** What is settled in a bar before there is a plan. */
export interface Given {
  /** The notes of a bar that stays as it is; null for one that is free. */
  readonly option: Option | null;
}
