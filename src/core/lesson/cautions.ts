/** A caution as it is shown to a student, with where it comes from. */
export interface Caution {
  /** The whole caution, as the practice page shows it. */
  readonly text: string;
  /** The same in the few words that the foot of a sheet of paper has room for. */
  readonly brief: string;
  /** The name of the source, shown where the caution stands. */
  readonly by: string;
  /** The source in full. */
  readonly source: string;
}

/** What stands over the cautions. */
export const CAUTIONS_HEADING = 'Hands and ears';

/** What a student is told about hands and ears, in the order of a practice session. */
export const CAUTIONS: readonly Caution[] = [
  {
    text: 'Warm up by moving: walk or climb stairs for three to five minutes, then move shoulders, elbows and wrists in easy circles, then play slowly. Warming up is not stretching.',
    brief: 'Warm up by moving.',
    by: 'BAPAM; “Bassists, save your hands”',
    source:
      'British Association for Performing Arts Medicine, factsheet "Don\'t Cramp Your Style": a warm-up before playing, shoulders, arms and wrists, no stretching; bassplayer.com, "Bassists, save your hands": three to five minutes of moderate movement, from large to small',
  },
  {
    text: 'Keep the wrists relaxed and nearly straight.',
    brief: 'Wrists nearly straight.',
    by: '“Bassists, save your hands”',
    source: 'bassplayer.com, "Bassists, save your hands"; whitt.ca, bass lesson, technique',
  },
  {
    text: 'Pain means stop. If pain, numbness or ringing in the ears comes back or stays, ask a doctor: this is no medical advice.',
    brief: 'Pain means stop. If it stays, ask a doctor.',
    by: 'BAPAM',
    source:
      'British Association for Performing Arts Medicine, factsheet "Don\'t Cramp Your Style": stop if you feel pain; common practice, no source, for the doctor',
  },
  {
    text: 'Rest five to ten minutes in every hour.',
    brief: 'Rest five minutes an hour.',
    by: 'Newswise',
    source: 'newswise.com, "Five tips music students should guard against injury"',
  },
  {
    text: 'Headphones: set the volume in a quiet room, at most 60 % of full; you should still hear someone speak beside you. WHO and ITU advise at most 80 dB for 40 hours a week, 75 dB for children.',
    brief: 'Headphones: at most 60 % of full.',
    by: 'WHO',
    source:
      'World Health Organization, leaflet "Make Listening Safe" (60 % of full volume, set in a quiet place); WHO and ITU, Recommendation H.870 (80 dB and 75 dB); hearing someone speak: common practice, no source',
  },
  {
    text: 'A loud rehearsal is short, or has ear plugs and pauses: at work the advised limit is 85 dBA for eight hours, and half the time for every 3 dB more, so one hour at 94 dBA.',
    brief: 'Loud rehearsals: ear plugs.',
    by: 'NIOSH',
    source:
      'NIOSH, criteria for a recommended standard: occupational noise exposure, 1998: 85 dBA for eight hours, exchange rate 3 dB; a limit for work, not for leisure',
  },
];

/** A caution with the name of its source, as the practice page shows it. */
export function cautionWords({ text, by }: Caution): string {
  return `${text} (${by})`;
}

/** All cautions in few words, as the foot of a sheet has room for them; in full they stand on the practice page. */
export function cautionsInBrief(): string {
  return `${CAUTIONS.map(({ brief }) => brief).join(' ')} (BAPAM, WHO, NIOSH)`;
}
