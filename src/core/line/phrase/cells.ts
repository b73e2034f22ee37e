import type { Contour, Feel, Role } from '../../feel';
import { EARLY_SEVENTH, rhythmLevelIn } from '../level';
import type { Segment } from './segments';

/** A note of a cell, in ticks from the beginning of its bar. */
export interface CellNote {
  readonly start: number;
  readonly duration: number;
}

/** A contour laid into a segment. */
export interface Cell {
  readonly contour: Contour;
  readonly notes: readonly CellNote[];
  /** Lowest teaching level whose notes, rhythm and leads it keeps to. */
  readonly level: number;
  /** The longest silence, and all of it, in ticks. */
  readonly longest: number;
  readonly silence: number;
}

/** The level that a role belongs to (trade's level table; sixth and seventh as passing notes from 3 on). */
export function roleLevel(role: Role): number {
  switch (role.kind) {
    case 'repeat':
      return 0;
    case 'colour':
      return 3;
    case 'blue third':
    case 'sharp fourth':
      return 4;
    case 'step': {
      const step = ((role.step - 1) % 7) + 1;
      if (step === 1) return role.step === 1 && role.octave === 0 ? 0 : 1;
      return step === 5 ? 1 : step === 3 ? 2 : 3;
    }
  }
}

/** Half a beat is two thirds of one where the beat divides into three. */
function inBeats(place: number, compound: boolean): number | null {
  const part = place % 1;
  if (!compound || part === 0) return place;
  return part === 0.5 ? Math.floor(place) + 2 / 3 : null;
}

/**
 * Lays a contour into a segment.
 * @param triple the segment's beat divides into three, the book's into two
 * @returns null where the rhythm does not go into the segment
 */
export function cellOf(
  segment: Segment,
  contour: Contour,
  triple: boolean,
  bassRole: Feel['bassRole'],
): Cell | null {
  const { bar, start, end, unit } = segment;
  const notes: CellNote[] = [];
  let silence = 0;
  let longest = 0;
  let from = start;
  for (const beat of contour.beats) {
    const at = inBeats(beat.start, triple);
    const until = inBeats(beat.start + beat.duration, triple);
    if (at === null || until === null) return null;
    const begins = start + Math.round(at * unit);
    const ends = Math.min(end, start + Math.round(until * unit));
    if (begins >= end) return null;
    notes.push({ start: begins, duration: ends - begins });
    silence += begins - from;
    longest = Math.max(longest, begins - from);
    from = ends;
  }
  silence += end - from;
  longest = Math.max(longest, end - from);
  const early = bassRole.seventhsEarly && segment.ladder?.ownSeventh === true;
  const levelOf = (role: Role) => (early && role.kind === 'colour' ? EARLY_SEVENTH : roleLevel(role));
  const roles = contour.roles.reduce((most, role) => Math.max(most, levelOf(role)), 0);
  const leads = Math.min(3, contour.leads);
  const level = Math.max(roles, leads, rhythmLevelIn(notes, bar.metre, bassRole));
  return { contour, notes, level, longest, silence };
}
