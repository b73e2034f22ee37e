import { changesBetween, knowsRootsOnly, type LineModel } from '../model';
import { isHome, type Tone } from '../tones';
import { type Rule, TEACHERS_LIST } from './types';

const isTritoneLeap = (model: LineModel, last: Tone, first: Tone): boolean =>
  Math.abs(first.midi - last.midi) % 12 === 6 && !(knowsRootsOnly(model) && isHome(last) && isHome(first));

export const TRITONE_LEAP: Rule = {
  number: 5,
  rule: 'No tritone leap into a chord change.',
  source: TEACHERS_LIST,
  heard: 'a tritone leap into the new chord',
  mend: 'reach the root by step, fourth or fifth',
  caution: {
    own: 'it meets the next chord with a tritone leap',
    entering: 'the bar before leaps into it by a tritone',
  },
  alone: ({ model, tones }) =>
    tones.some((tone, index) => {
      const before = tones[index - 1];
      return (
        before !== undefined &&
        before.stretch?.label !== tone.stretch?.label &&
        isTritoneLeap(model, before, tone)
      );
    }),
  inParts: true,
  meeting: ({ model, from, exit, to, entry }) =>
    changesBetween(from, to) && isTritoneLeap(model, exit.last, entry.first),
  tied: null,
  whole: null,
};
