import type { Degree } from '../../theory';

export type Step = Degree['step'];

export interface Kind {
  readonly name: string;
  /** Folded into one octave, as the chords of theory are. */
  readonly degrees: readonly Degree[];
}

/** The steps above a root, within an octave. */
export const STEPS: readonly Step[] = [1, 2, 3, 4, 5, 6, 7];

const degree = (text: string): Degree => {
  const signs = text.slice(0, -1);
  const alteration = signs === 'bb' ? -2 : signs === 'b' ? -1 : signs === '#' ? 1 : 0;
  return { step: STEPS[Number(text.at(-1)) - 1] ?? 1, alteration };
};
/** The chord kinds of MusicXML 4.0 (simple type kind-value) and the degrees that its documentation gives them. */
export const KINDS: readonly Kind[] = [
  ['major', '1 3 5'],
  ['minor', '1 b3 5'],
  ['dominant', '1 3 5 b7'],
  ['major-seventh', '1 3 5 7'],
  ['minor-seventh', '1 b3 5 b7'],
  ['half-diminished', '1 b3 b5 b7'],
  ['diminished', '1 b3 b5'],
  ['diminished-seventh', '1 b3 b5 bb7'],
  ['augmented', '1 3 #5'],
  ['augmented-seventh', '1 3 #5 b7'],
  ['major-minor', '1 b3 5 7'],
  ['major-sixth', '1 3 5 6'],
  ['minor-sixth', '1 b3 5 6'],
  ['suspended-second', '1 2 5'],
  ['suspended-fourth', '1 4 5'],
  ['power', '1 5'],
  ['dominant-ninth', '1 3 5 b7 2'],
  ['major-ninth', '1 3 5 7 2'],
  ['minor-ninth', '1 b3 5 b7 2'],
  ['dominant-11th', '1 3 5 b7 2 4'],
  ['major-11th', '1 3 5 7 2 4'],
  ['minor-11th', '1 b3 5 b7 2 4'],
  ['dominant-13th', '1 3 5 b7 2 4 6'],
  ['major-13th', '1 3 5 7 2 4 6'],
  ['minor-13th', '1 b3 5 b7 2 4 6'],
].map(([name = '', degrees = '']) => ({ name, degrees: degrees.split(' ').map(degree) }));
