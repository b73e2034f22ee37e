/** Basses of General MIDI 1 (MMA, RP-003): programmes 33 to 40, counted from 1. */
const isBassProgram = (program: number): boolean => program >= 33 && program <= 40;

/** Names of bass instruments in the languages that scores are written in, and of what only sounds like one. */
const BASS_NAME =
  /\b(?:bass|basso|basse|baß|kontrabass|contrabass|contrebasse|e-?bass|bajo|baixo)(?:es|i)?(?:\b|\d)/i;
const OTHER_BASS =
  /\bbass[ .-]?(?:drum|clarinet|flute|trombone|tuba|voice|saxophone|sax|recorder)|basset|bassoon/i;

/**
 * How much the sound and the name of a part speak for a bass line (common practice, no source). More is likelier.
 * @param program of General MIDI, counted from 1; null without one
 */
export const bassPoints = (program: number | null, name: string): number =>
  (program !== null && isBassProgram(program) ? 8 : 0) +
  (BASS_NAME.test(name) && !OTHER_BASS.test(name) ? 8 : 0);

/** Half steps that weigh as much as one point. */
export const HALF_STEPS_A_POINT = 24;
