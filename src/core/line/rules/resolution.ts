import { changesBetween, knowsRootsOnly } from '../model';
import { isHome, type Tone } from '../tones';
import { isDominantSeventh, isRoot } from './ends';
import { type Rule, TEACHERS_LIST } from './types';

/** Whether the last seventh before another chord falls by step, or goes to the new root. */
const resolves = (seventh: Tone, next: Tone): boolean =>
  isRoot(next) || (seventh.midi - next.midi >= 1 && seventh.midi - next.midi <= 2);

const rises = (from: number, to: number): boolean => to - from >= 1 && to - from <= 2;

export const RESOLUTION: Rule = {
  number: 4,
  rule: 'A dominant’s seventh is a chord tone like others; where it is the last note before another chord it falls by step or goes to the new root. A leading tone that ends a bar rises.',
  source: TEACHERS_LIST,
  heard: 'a seventh or a leading tone does not resolve',
  mend: 'let the seventh fall and the leading tone rise by step',
  caution: {
    own: 'the next bar does not resolve its last note',
    entering: 'it does not resolve the last note of the bar before',
  },
  alone: ({ tones }) =>
    tones.some((tone, index) => {
      const next = tones[index + 1];
      return (
        next !== undefined &&
        isDominantSeventh(tone) &&
        next.stretch?.label !== tone.stretch?.label &&
        !resolves(tone, next)
      );
    }),
  inParts: true,
  meeting: ({ model, from, exit: { last, seventh, leadingTone }, to, entry: { first } }) => {
    if (seventh && changesBetween(from, to) && !resolves(last, first)) return true;
    // A level of roots cannot go on by step from the root of a chord on the leading tone.
    const helpless = knowsRootsOnly(model) && isHome(last);
    return leadingTone && !helpless && !rises(last.midi, first.midi);
  },
  tied: null,
  whole: null,
};
