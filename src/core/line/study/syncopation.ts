import { type Metre, metreName, unitTicks } from '../../base';

/** How the bars of each metre divide, from the whole bar down; metres without a published hierarchy have none. */
const DIVISIONS: Readonly<Record<string, readonly number[]>> = {
  '2/4': [2, 2, 2],
  '3/4': [3, 2, 2],
  '4/4': [2, 2, 2, 2],
  '2/2': [2, 2, 2, 2],
  '6/8': [2, 3, 2],
  '9/8': [3, 3, 2],
  '12/8': [2, 2, 3, 2],
};

/**
 * The weights of a bar's equal parts: 0 for its beginning, and one less with each level of division (H. C.
 * Longuet-Higgins and C. S. Lee, "The Rhythmic Interpretation of Monophonic Music", Music Perception 1(4), 1984).
 * @param divisions - into how many parts each level divides: 2 2 2 for eighths in 4/4
 */
export function metricWeights(divisions: readonly number[]): readonly number[] {
  const parts = divisions.reduce((product, division) => product * division, 1);
  return Array.from({ length: parts }, (_, place) => {
    let length = parts;
    let weight = 0;
    while (place % length !== 0) {
      length /= divisions[-weight] ?? 1;
      weight -= 1;
    }
    return weight === 0 ? 0 : weight;
  });
}

/**
 * The syncopations of a rhythm by the same measure: a note before a rest, or before a note held over a place, of more
 * weight than its own; its strength is the difference.
 * @param struck - whether each equal part of the bars begins with a note
 * @param weights - of those parts
 * @returns for each part the strength of the syncopation that its note makes; 0 for none
 */
export const syncopationsIn = (struck: readonly boolean[], weights: readonly number[]): readonly number[] =>
  struck.map((is, place) => {
    if (!is) return 0;
    const next = struck.indexOf(true, place + 1);
    const silent = weights.slice(place + 1, next < 0 ? struck.length : next);
    return Math.max(0, ...silent.map((weight) => weight - (weights[place] ?? 0)));
  });

/**
 * How strongly a bar is syncopated, the beat one that follows it counted in where nothing is struck there; null where the
 * metre has no published hierarchy, or a note falls beside the sixteenths.
 * @param starts - of the struck notes, in ticks from the bar's beginning
 * @param struckNext - whether a note is struck on the beat one that follows
 */
export function syncopationOf(starts: readonly number[], metre: Metre, struckNext: boolean): number | null {
  const divisions = DIVISIONS[metreName(metre)];
  if (divisions === undefined) return null;
  const weights = metricWeights(divisions);
  const part = (unitTicks(metre) * metre.count) / weights.length;
  if (starts.some((start) => start % part !== 0)) return null;
  const struck = [...weights.map((_, place) => starts.includes(place * part)), struckNext];
  return syncopationsIn(struck, [...weights, 0]).reduce((sum, strength) => sum + strength, 0);
}
