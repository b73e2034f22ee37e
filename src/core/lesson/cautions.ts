/** A caution as it is shown to a student, with where it comes from. */
export interface Caution {
  readonly text: string;
  readonly source: string;
}

/** What stands over the cautions. */
export const CAUTIONS_HEADING = 'Hands and ears';

/** What a student is told about hands and ears, in the order of a practice session. */
export const CAUTIONS: readonly Caution[] = [
  {
    text: 'Warm up for three to five minutes before you play, and keep the wrist straight.',
    source: 'bassplayer.com, "Bassists, save your hands"; whitt.ca, bass lesson, technique',
  },
  {
    text: 'Pain means stop. If pain, numbness or ringing in the ears comes back or stays, ask a doctor: this sheet is no medical advice.',
    source: 'bassplayer.com, "Bassists, save your hands"; common practice, no source, for the doctor',
  },
  {
    text: 'Rest five to ten minutes in every hour.',
    source: 'newswise.com, "Five tips music students should guard against injury"',
  },
  {
    text: 'Keep headphones low: 80 dB for 40 hours a week is the safe limit for adults, 75 dB for children.',
    source: 'WHO and ITU, Recommendation H.870, safe listening',
  },
];
