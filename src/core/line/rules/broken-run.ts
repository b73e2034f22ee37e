import type { Tone } from '../tones';
import { runUpTo } from './ends';
import { type Rule, TEACHERS_LIST } from './types';

const breaksRun = (run: number, last: Tone, next: number): boolean => {
  const distance = Math.abs(next - last.midi);
  return run !== 0 && (distance === 10 || distance === 11 || (!last.member && distance > 2));
};

export const BROKEN_RUN: Rule = {
  number: 7,
  rule: 'A run lands by step in its real register, never by a seventh.',
  source: TEACHERS_LIST,
  heard: 'a run breaks off into another register',
  mend: 'let it land by step',
  caution: { own: 'the next bar breaks off its run', entering: 'it breaks off the run of the bar before' },
  alone: ({ tones }) =>
    tones.some((tone, index) => {
      const before = tones[index - 1];
      return before !== undefined && breaksRun(runUpTo(tones, index - 1), before, tone.midi);
    }),
  inParts: true,
  meeting: ({ exit, entry }) => breaksRun(exit.run, exit.last, entry.first.midi),
  tied: null,
  whole: null,
};
