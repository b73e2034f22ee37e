/** The order of practising: clap, drums only, with a guiding bass, without it, answer (common practice, no source). */
export const USUAL_STEPS: readonly string[] = [
  'Clap the rhythm and count aloud; whisper the rests.',
  'Loop one or two bars with the drums only, then four, then all.',
  'Play along with the bass as a guide, then without it.',
  'Play a bar as it is written, and answer with a bar of your own.',
];
