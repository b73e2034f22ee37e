import type { LineModel } from '../model';

/** Lengths of the phrases of a section: fours, the rest at the end; five are three and two. */
function phraseLengths(bars: number): readonly number[] {
  const lengths: number[] = [];
  let left = bars;
  while (left > 0) {
    const length = left === 5 ? 3 : Math.min(4, left);
    lengths.push(length);
    left -= length;
  }
  return lengths;
}

/** Whether a section begins with a pickup, before its first bar. */
export const isLeadIn = ({ bars }: LineModel, start: number, length: number): boolean =>
  length > 1 && bars[start]?.pickup === true;

/** Bars of a section that belong together: four as a rule. */
export interface Phrase {
  /** Index of its first bar. */
  readonly start: number;
  /** In bars. */
  readonly length: number;
  /** Its place among the phrases of its section, and how many those are. */
  readonly at: number;
  readonly of: number;
}

/** The phrases of a chart, section by section; a pickup is no bar of a phrase. */
export const phrasesOfForm = (model: LineModel): readonly Phrase[] =>
  model.request.chart.sections.flatMap((section) => {
    const pickup = isLeadIn(model, section.start, section.length) ? 1 : 0;
    let start = section.start + pickup;
    return phraseLengths(section.length - pickup).map((length, at, all) => {
      const phrase = { start, length, at, of: all.length };
      start += length;
      return phrase;
    });
  });
