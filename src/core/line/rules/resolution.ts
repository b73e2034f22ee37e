import type { Tone } from '../tones';
import { type Entry, type Exit, falls, isDominantSeventh } from './ends';
import { type Rule, TEACHERS_LIST } from './types';

/** Whether a dominant's seventh is left hanging by both of the notes after it. */
const hangs = (tone: Tone, second: Tone | undefined, third: Tone | undefined): boolean =>
  isDominantSeventh(tone) &&
  second !== undefined &&
  third !== undefined &&
  !falls(tone.midi, second.midi) &&
  !falls(tone.midi, third.midi);

/** What still has to resolve over the bar line, and the first notes that come. */
function leavesHanging(exit: Exit, { first, second }: Entry): boolean {
  const distance = first.midi - exit.last.midi;
  if (exit.dueNow !== null && !falls(exit.dueNow, first.midi)) return true;
  if (
    exit.dueSoon !== null &&
    !falls(exit.dueSoon, first.midi) &&
    !falls(exit.dueSoon, second ?? undefined)
  ) {
    return true;
  }
  return exit.leadingTone && !(distance >= 1 && distance <= 2);
}

export const RESOLUTION: Rule = {
  number: 4,
  rule: 'A dominant’s seventh falls by step within two notes; a leading tone that ends a bar rises.',
  source: TEACHERS_LIST,
  heard: 'a seventh or a leading tone does not resolve',
  mend: 'let the seventh fall and the leading tone rise by step',
  caution: {
    own: 'the next bar does not resolve its last note',
    entering: 'it does not resolve the last note of the bar before',
  },
  alone: ({ tones }) => tones.some((tone, index) => hangs(tone, tones[index + 1], tones[index + 2])),
  meeting: ({ exit, entry }) => leavesHanging(exit, entry),
  tied: null,
  whole: null,
};
