import { CAUTIONS } from '../lesson';
import type { Stretch } from './stretch';

/** What the hands have done since the last break, in seconds. */
export interface Load {
  readonly seconds: number;
  readonly notes: number;
  /** The longest time without a rest in the music. */
  readonly longest: number;
  /** When something was played last. */
  readonly ended: number;
}

export const NO_LOAD: Load = { seconds: 0, notes: 0, longest: 0, ended: Number.NEGATIVE_INFINITY };

/** Our own figures: silence that counts as a break, and how much is played before one is proposed. */
const OURS = { break: 60, seconds: 600, notes: 1200, longest: 180 } as const;

/** What has been done when a stretch has been played; after a break it begins anew. */
export function loadAfter(load: Load, { began, last, notes, longest }: Stretch): Load {
  const rested = began - load.ended >= OURS.break;
  const before = rested ? NO_LOAD : load;
  return {
    seconds: before.seconds + last.at - began,
    notes: before.notes + notes,
    longest: Math.max(before.longest, longest),
    ended: last.at,
  };
}

const inMinutes = (seconds: number): string => {
  const minutes = Math.max(1, Math.round(seconds / 60));
  return minutes === 1 ? 'one minute' : `${minutes} minutes`;
};

const cautionOf = (brief: string): string =>
  CAUTIONS.find((caution) => caution.brief.startsWith(brief))?.text ?? '';

/** Proposes a rest by what was really played, in the words of the cautions; null while none is due. */
function restWords({ seconds, notes, longest }: Load): string | null {
  const due = seconds >= OURS.seconds || notes >= OURS.notes || longest >= OURS.longest;
  if (!due) return null;
  const rate = Math.round(notes / Math.max(1, seconds / 60));
  const held = longest >= 30 ? `, the longest stretch without a rest ${inMinutes(longest)}` : '';
  return `Let the hand rest for a minute or two: ${notes} notes in ${inMinutes(seconds)} without a break, ${rate} a minute${held}. When to say so is our own figure. ${cautionOf('Rest')} ${cautionOf('Pain')}`;
}

/**
 * The proposal that stands while someone plays: it keeps the figures with which it came, so that it is said once, and goes
 * when a break was taken, so that the next one is said again.
 * @param before - what stood until now; null for nothing
 */
export function restStanding(before: string | null, load: Load): string | null {
  const words = restWords(load);
  return words === null ? null : (before ?? words);
}
