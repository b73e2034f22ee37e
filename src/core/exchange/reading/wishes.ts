import type { FeelId } from '../../feel';

/** What is asked of a file of music. Null asks for what is likeliest. */
export interface Wishes {
  /** Id of the part that the line is read from. */
  readonly part: string | null;
  /** Id of the voice within that part. */
  readonly voice: string | null;
  readonly take: 'line' | 'chords';
  /** Octaves by which the notes go down; null for as many as bring most of them onto the neck. */
  readonly octaves: number | null;
  /** Id of where the chords come from. */
  readonly chords: string | null;
  /** Id of the grid that what was played is written on. */
  readonly grid: string | null;
  /** Id of where the beats come from. */
  readonly pulse: string | null;
  /** Null while the teacher has not said it; the file's own where it names one. */
  readonly feel: FeelId | null;
}

/** Nothing in particular: the likeliest part as a line. */
export const LIKELIEST: Wishes = {
  part: null,
  voice: null,
  take: 'line',
  octaves: null,
  chords: null,
  grid: null,
  pulse: null,
  feel: null,
};
