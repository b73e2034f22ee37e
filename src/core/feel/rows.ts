import type { DrumRow, DrumSound, Feel, Grid, RhythmCell, Source } from './types';

/** What a row is marked with that the trade knows and no publication stands behind. */
export const COMMON_PRACTICE: Source = 'common practice, no source';

/** What a row is marked with that was made for this program. */
export const OURS: Source = 'ours, no source';

/**
 * A row of a table of bass rhythms.
 * @param source whether the rhythm is one that everybody plays, or one of this program's own
 * @param level the lowest teaching level, 0–5
 */
export const bass = (source: Source, grid: Grid, level: number): RhythmCell => ({
  grid,
  level,
  source,
});

/** A row of a drum grid. */
export const drum = (sound: DrumSound, grid: Grid, source: Source): DrumRow => ({
  sound,
  grid,
  source,
});

/** A figure the feel is known by. */
export const figures = (source: Source, ...shapes: readonly string[]) =>
  shapes.map((shape) => ({ shape, source }));

/** A held chord for the organ in feels that have no bubble. */
export const pad = (steps: number, source: Source) => ({
  left: { grid: 'x'.padEnd(steps, '='), source },
  right: { grid: 'x'.padEnd(steps, '='), source },
});

/** Weights of chord tones, scale steps and space, from 0 to 1. */
export const weights = (chordTones: number, scaleSteps: number, space: number, source: Source) => ({
  chordTones,
  scaleSteps,
  space,
  source,
});

/** What the rules grant the bass and ask of it in a feel that is no exception. */
export const PLAIN_ROLE: Feel['bassRole'] = {
  mayRestOnOne: false,
  mayHammer: false,
  mayPump: false,
  carriesThree: false,
  dotsEarly: false,
  sixteenthsEarly: false,
  seventhsEarly: false,
  source: COMMON_PRACTICE,
};
