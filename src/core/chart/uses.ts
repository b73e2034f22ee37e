import { sectionId } from './lines';
import type { Chart } from './types';

/** The section that each one was written out in first: itself, or for a name alone the section it repeats. */
const sourceOf = (chart: Chart, section: number): number => {
  const own = chart.sections[section];
  if (own?.again !== true || own.name === null) return section;
  const id = sectionId(own.name);
  return chart.sections.findLastIndex(
    ({ name, again }, index) => index < section && !again && name !== null && sectionId(name) === id,
  );
};

/** The bar (index from 0) whose text a bar is read from: itself, or its model where a section is used again. */
export function writtenBar(chart: Chart, bar: number): number {
  const section = chart.bars[bar]?.section ?? 0;
  const start = chart.sections[section]?.start ?? 0;
  const model = chart.sections[sourceOf(chart, section)]?.start ?? start;
  return bar - start + model;
}

/** Every bar that is read from the same text as a bar: itself first where it is written, then where it comes again. */
export const usesOf = (chart: Chart, bar: number): readonly number[] => {
  const written = writtenBar(chart, bar);
  return chart.bars.flatMap((_, index) => (writtenBar(chart, index) === written ? [index] : []));
};
