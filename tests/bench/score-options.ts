import type { ScoreOptions } from '../../src/score/types';

/** What every benchmark of the score shows. */
export const SCORE_OPTIONS: ScoreOptions = {
  width: 900,
  degrees: true,
  fingers: true,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};
