/** How the rhythm section reached the student, and whether it was in what was heard. */
export type Way = 'headphones' | 'taken off' | 'not taken off';

/**
 * Decibels that what is left of a loudspeaker has to be below what is heard: above that a drum may still be taken for a note,
 * and an organ for a rest that is filled; ours, found on the bench (`tests/listening`).
 */
const ENOUGH = 27;

/**
 * @param aloud - the rhythm section comes from a loudspeaker
 * @param below - how far what is left of it is below what is heard, in decibels
 */
export const waysOf = (aloud: boolean, below: number): Way =>
  !aloud ? 'headphones' : below >= ENOUGH ? 'taken off' : 'not taken off';

const WORDS: Readonly<Record<Way, string>> = {
  headphones: 'Listened with the rhythm section in headphones.',
  'taken off': 'Listened beside the loudspeaker, and its sound was taken off.',
  'not taken off':
    'Listened beside the loudspeaker; its sound could not be taken off far enough, so nothing is said of rests and of notes too many.',
};

/** Which way was used, in a sentence. */
export const waysWords = (way: Way): string => WORDS[way];
