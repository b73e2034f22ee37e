import type { Contour, Role } from '../../feel';

/** How a contour is kin to the motif: what an operation of the plan would make of it. */
export type Kinship = 'same' | 'varied tail' | 'inverted' | 'fragment' | 'lifted' | 'other';

/** A role as a height in scale steps, for comparing shapes; null for a repeat of nothing. */
function heightOf(role: Role): number | null {
  switch (role.kind) {
    case 'repeat':
      return null;
    case 'colour':
      return 6.5 + 7 * role.octave;
    case 'blue third':
      return 2.6 + 7 * role.octave;
    case 'sharp fourth':
      return 4.5 + 7 * role.octave;
    case 'step':
      return role.step + 7 * role.octave;
  }
}

/** The books stay as they are, so heights are told once. */
const knownHeights = new WeakMap<Contour, readonly number[]>();

/** How high the notes with a role stand, in scale steps; a repeat takes the height before it. */
export function heightsOf(contour: Contour): readonly number[] {
  const known = knownHeights.get(contour);
  if (known) return known;
  const heights: number[] = [];
  for (const role of contour.roles) heights.push(heightOf(role) ?? heights.at(-1) ?? 1);
  knownHeights.set(contour, heights);
  return heights;
}

/** Up, down or level, from note to note. */
export const directionsOf = (heights: readonly number[]): readonly number[] =>
  heights.slice(1).map((height, index) => Math.sign(height - (heights[index] ?? height)));

const equal = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((value, index) => value === other[index]);

/**
 * The operation that leads from the motif to a contour: the same steps over another chord (sequence), the same
 * beginning with another tail, the shape turned upside down, its beginning alone, or the shape moved up.
 */
export function kinship(motif: Contour, contour: Contour): Kinship {
  const one = heightsOf(motif);
  const other = heightsOf(contour);
  if (equal(one, other)) return 'same';
  const [moves, others] = [directionsOf(one), directionsOf(other)];
  const shift = (other[0] ?? 0) - (one[0] ?? 0);
  if (one.length > 1 && equal(moves, others) && shift >= 4) return 'lifted';
  const shared = Math.min(moves.length, others.length);
  const turned = moves.slice(0, shared).every((move, index) => move === 0 || move === -(others[index] ?? 0));
  if (shared > 0 && turned && moves.slice(0, shared).some((move) => move !== 0)) return 'inverted';
  if (other.length >= 2 && other.length < one.length && equal(one.slice(0, other.length), other))
    return 'fragment';
  const head = Math.max(2, Math.min(one.length, other.length) - 1);
  if (equal(one.slice(0, head), other.slice(0, head))) return 'varied tail';
  return 'other';
}
