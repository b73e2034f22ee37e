import { classAbove, type Stretch } from '../harmony';
import type { BarModel } from '../model';
import type { Tone } from '../tones';
import { type Rule, TEACHERS_LIST } from './types';

/** Whether a note that goes on into another chord belongs there too. */
const fitsInto = (tone: Tone, stretch: Stretch): boolean =>
  stretch.chord === null || stretch.members[classAbove(tone.midi, stretch.rootClass)] === true;

const ringsOver = (bar: BarModel, tone: Tone): boolean =>
  bar.stretches.some(
    (stretch) =>
      tone.start < stretch.start && tone.start + tone.duration > stretch.start && !fitsInto(tone, stretch),
  );

export const RINGING: Rule = {
  number: 15,
  rule: 'No ringing across a chord change unless the note belongs to both chords.',
  source: TEACHERS_LIST,
  heard: 'a note rings on into a chord it does not belong to',
  mend: 'end it at the change',
  caution: { own: 'a neighbour’s note rings into its chord', entering: null },
  alone: ({ bar, tones }) => tones.some((tone) => ringsOver(bar, tone)),
  inParts: true,
  meeting: null,
  tied: ({ exit, to }) => {
    const stretch = to.stretches[0];
    return stretch !== undefined && !fitsInto(exit.last, stretch);
  },
  whole: null,
};
