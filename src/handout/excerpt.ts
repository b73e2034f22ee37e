import type { LineSheet } from '../core/lesson';

/**
 * Some bars of a line as a sheet of their own: for an example on the page, or a picture. Repeat signs, endings
 * and the names of sections stay out, for what they lead to is not there.
 * @param first - index of the first written bar
 * @param last - index of the last one, included
 * @throws RangeError when the line has no such bars
 */
export function excerptOf(sheet: LineSheet, first: number, last: number): LineSheet {
  if (!(first >= 0 && first <= last && last < sheet.bars.length)) {
    throw new RangeError(`The line has no bars ${first + 1} to ${last + 1}`);
  }
  const bars = sheet.bars.slice(first, last + 1).map((bar) => ({
    ...bar,
    written: { ...bar.written, repeatStart: false, repeatEnd: null, ending: null },
  }));
  const sections = sheet.chart.sections.map((section) => ({ ...section, name: null }));
  return {
    ...sheet,
    excerpt: true,
    bars,
    chart: { ...sheet.chart, sections, bars: bars.map((bar) => bar.written) },
  };
}
