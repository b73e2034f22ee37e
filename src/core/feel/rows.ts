import type { DrumRow, DrumSound, Feel, Grid, PhraseRole, RhythmCell } from './types';

/** What a row is marked with when no publication stands behind it. */
export const COMMON_PRACTICE = 'common practice, no source';

/** What a row is marked with that was made for this program. */
export const OURS = 'ours, no source';

const ROLE_LETTERS: Readonly<Record<string, PhraseRole>> = {
  s: 'statement',
  a: 'answer',
  t: 'turnaround',
};

/**
 * A row of a table of bass rhythms.
 * @param roles letters of the phrase roles the rhythm suits: `s`tatement, `a`nswer, `t`urnaround
 * @param level the lowest teaching level, 0–5
 * @param highest the highest level whose statements it suits
 */
export function bass(
  grid: Grid,
  level: number,
  roles: string,
  highest = 5,
  source = COMMON_PRACTICE,
): RhythmCell {
  return {
    id: grid,
    grid,
    level,
    highest,
    roles: [...roles].flatMap((letter) => ROLE_LETTERS[letter] ?? []),
    source,
  };
}

/** A row of a drum grid. */
export const drum = (sound: DrumSound, grid: Grid, source = COMMON_PRACTICE): DrumRow => ({
  sound,
  grid,
  source,
});

/** A figure the feel is known by. */
export const figures = (source: string, ...shapes: readonly string[]) =>
  shapes.map((shape) => ({ shape, source }));

/** A held chord for the organ in feels that have no bubble. */
export const pad = (steps: number) => ({
  left: { grid: 'x'.padEnd(steps, '='), source: COMMON_PRACTICE },
  right: { grid: 'x'.padEnd(steps, '='), source: COMMON_PRACTICE },
});

/** Weights of chord tones, scale steps and space, from 0 to 1. */
export const weights = (chordTones: number, scaleSteps: number, space: number, source = COMMON_PRACTICE) => ({
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
  source: COMMON_PRACTICE,
};
