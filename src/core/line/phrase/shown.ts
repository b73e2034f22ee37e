import { techniquesOf } from '../analysis';
import { type Around, functionsIn } from '../functions';
import type { BarModel } from '../model';
import type { Tone } from '../tones';
import { TECHNIQUES, type Technique } from '../types';

/** A set of techniques as bits, so that the search can ask thousands of times. */
export type Techniques = number;

const BITS: ReadonlyMap<Technique, number> = new Map(
  TECHNIQUES.map((technique, index) => [technique, 1 << index]),
);

export const bitOf = (technique: Technique): Techniques => BITS.get(technique) ?? 0;

export const bitsOf = (techniques: Iterable<Technique>): Techniques => {
  let bits = 0;
  for (const technique of techniques) bits |= bitOf(technique);
  return bits;
};

/** What a bar shows beside what comes before and after it, by the rows of the techniques. */
export const shownIn = (bar: BarModel, tones: readonly Tone[], around: Around): Techniques =>
  bitsOf(techniquesOf({ bar, tones, functions: functionsIn(bar, tones, around) }));

/** How many techniques a set holds. */
export function countOf(techniques: Techniques): number {
  let count = 0;
  for (let rest = techniques; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}
