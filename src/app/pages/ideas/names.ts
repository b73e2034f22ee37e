import { beatWords, listed, type Metre } from '../../../core/base';
import type { Idea } from '../../../core/line';
import { formatPitchIn, type Naming } from '../../../core/theory';
import { degreesLine, describeTechniques } from '../words';

type Named = Pick<Idea, 'notes' | 'analysis'>;

/** What may tell ideas of the same degrees apart, in the order in which a teacher would say it. */
const DIFFERENCES: readonly ((idea: Named, placed: (tick: number) => string, naming: Naming) => string)[] = [
  ({ notes }, placed) => `on ${listed(notes.map(({ start }) => placed(start)))}`,
  ({ notes }, _, naming) => `with ${listed(notes.map(({ pitch }) => formatPitchIn(naming, pitch)))}`,
];

/**
 * A name for each idea for a bar: what it teaches, then its degrees. Where names are the same, what differs is
 * added: where the notes are counted, their pitches, or at last the place in the list.
 * @param placed - where in the bar a tick lies, as it is counted
 */
export function ideaNames(
  ideas: readonly Named[],
  metre: Metre,
  naming: Naming = 'letters',
  placed = (tick: number): string => beatWords(tick, metre),
): readonly string[] {
  let names = ideas.map(
    ({ notes, analysis }) =>
      `${describeTechniques(analysis.techniques)}: ${degreesLine(notes, analysis, metre)}`,
  );
  for (const difference of DIFFERENCES) {
    const told = ideas.map((idea) => (idea.notes.length === 0 ? '' : difference(idea, placed, naming)));
    names = names.map((name, index) => {
      const alike = names.flatMap((other, at) => (other === name ? [told[at]] : []));
      return new Set(alike).size > 1 ? `${name}, ${told[index]}` : name;
    });
  }
  return names.map((name, index) =>
    names.indexOf(name) === index ? name : `${name}, number ${index + 1} of the list`,
  );
}
