/**
 * What a stage of a build-up adds to the one before, in the usual order: where the line changes chords, how it moves in
 * time, which notes of the chords it takes, where it leaves beat one empty, how it steps and leads, how it is touched
 * (common practice, no source). `strong beats` parts the rhythm in two where a line has fewer stages than three.
 */
export const STAGE_THINGS = [
  'roots',
  'strong beats',
  'rhythm',
  'chord tones',
  'silence on one',
  'steps and leads',
  'touch',
] as const;
export type StageThing = (typeof STAGE_THINGS)[number];

/** Things that can change their places: a build-up begins with the roots and ends with the touch. */
export const MOVABLE_THINGS = ['rhythm', 'chord tones', 'silence on one', 'steps and leads'] as const;
export type MovableThing = (typeof MOVABLE_THINGS)[number];
