import { techniquesOf } from '../analysis';
import { type Around, functionsIn } from '../functions';
import type { BarModel } from '../model';
import { TECHNIQUE_ROWS } from '../techniques/table';
import type { Drawn, SeenPart, TechniqueRow } from '../techniques/types';
import type { Tone } from '../tones';
import { TECHNIQUES, type Technique } from '../types';

/** A set of techniques as bits, so that the search can ask thousands of times. */
export type Techniques = number;

const BITS: ReadonlyMap<Technique, number> = new Map(
  TECHNIQUES.map((technique, index) => [technique, 1 << index]),
);

export const bitOf = (technique: Technique): Techniques => BITS.get(technique) ?? 0;

/** Put beside asked techniques: they are insisted upon, as lines that only hope for them do not show them. */
export const INSISTED: Techniques = 1 << TECHNIQUES.length;

export const bitsOf = (techniques: Iterable<Technique>): Techniques => {
  let bits = 0;
  for (const technique of techniques) bits |= bitOf(technique);
  return bits;
};

/** What a bar shows beside what comes before and after it, by the rows of the techniques. */
export const shownIn = (bar: BarModel, tones: readonly Tone[], around: Around): Techniques =>
  bitsOf(techniquesOf({ bar, tones, functions: functionsIn(bar, tones, around) }));

function bitsWhere(holds: (row: TechniqueRow) => boolean): Techniques {
  let bits = 0;
  for (const row of TECHNIQUE_ROWS) if (holds(row)) bits |= bitOf(row.technique);
  return bits;
}

/** What a chord's share of a bar shows, by the rows. */
export const shownInPart = (part: SeenPart): Techniques => bitsWhere((row) => row.recognisePart(part));

const BY_LEAD = bitsWhere(({ lead }) => lead !== null);

/** What a contour may come to show, by the rows. @param leadsOn some of its notes are leads */
export const foreseenIn = (drawn: Drawn, leadsOn: boolean): Techniques =>
  bitsWhere((row) => row.mayShow(drawn)) | (leadsOn ? BY_LEAD : 0);

/** What it costs not to show a technique that the plan hopes for in a bar, and one that it insists upon (hand-set). */
const UNSHOWN = 7;
const UNSHOWN_INSISTED = 25;

/** What a bar costs for what it is asked and does not show. */
export function unshownCost(asks: Techniques, shows: Techniques): number {
  const open = countOf(asks & ~shows & ~INSISTED);
  return open * ((asks & INSISTED) === 0 ? UNSHOWN : UNSHOWN_INSISTED);
}

/** How many techniques a set holds. */
export function countOf(techniques: Techniques): number {
  let count = 0;
  for (let rest = techniques; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}
