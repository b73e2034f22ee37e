import { isLeap } from '../tones';
import { isExposed } from './ends';
import { type Rule, TEACHERS_LIST } from './types';

export const EXPOSED_NOTES: Rule = {
  number: 1,
  rule: 'A note outside the chord that lasts a quarter or longer is entered and left by step.',
  source: TEACHERS_LIST,
  heard: 'a long note outside the chord is reached or left by a leap',
  mend: 'enter and leave it by step',
  caution: { own: 'beside its neighbours a note outside the chord is left by a leap', entering: null },
  alone: ({ tones }) =>
    tones.some((tone, index) => {
      const before = tones[index - 1];
      return before !== undefined && (isExposed(tone) || isExposed(before)) && isLeap(before.midi, tone.midi);
    }),
  inParts: true,
  meeting: ({ exit, entry }) => (exit.exposed || entry.exposed) && isLeap(exit.last.midi, entry.first.midi),
  tied: null,
  whole: null,
};
