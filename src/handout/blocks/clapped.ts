import type { ScoreOptions } from '../../score';

/** What a rhythm is engraved with that is to be clapped: one line, its counting, nothing of its pitches. */
export const CLAPPED = {
  rhythm: true,
  counting: true,
  degrees: false,
  fingers: false,
  numerals: false,
  positions: false,
} as const satisfies Partial<ScoreOptions>;
