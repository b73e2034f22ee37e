import { type Chart, type ChartBar, sameEnding, timesToSay } from '../../chart';
import { type Element, element, tag } from './xml';

/**
 * The bar line at a bar's beginning, where it is not a plain one.
 * @param opens - a repeat begins there
 */
export function leftBarline(chart: Chart, index: number, opens: boolean): Element | null {
  const bar = chart.bars[index];
  if (!bar) return null;
  const begins = bar.ending !== null && !sameEnding(bar, chart.bars[index - 1]);
  if (!opens && !begins) return null;
  return element(
    'barline',
    { location: 'left' },
    opens ? tag('bar-style', 'heavy-light') : null,
    begins ? endingElement(bar, 'start') : null,
    opens ? element('repeat', { direction: 'forward' }) : null,
  );
}

const endingElement = (bar: ChartBar, type: 'start' | 'stop' | 'discontinue'): Element => {
  const numbers = bar.ending ?? [];
  return element(
    'ending',
    { number: numbers.join(','), type },
    type === 'start' ? `${numbers.join(', ')}.` : null,
  );
};

/** The bar line at a bar's end, where it is not a plain one. */
export function rightBarline(chart: Chart, index: number): Element | null {
  const bar = chart.bars[index];
  if (!bar) return null;
  const next = chart.bars[index + 1];
  const repeats = bar.repeatEnd !== null;
  const endingStops = bar.ending !== null && !sameEnding(bar, next);
  const style = repeats || !next ? 'light-heavy' : next.section !== bar.section ? 'light-light' : null;
  if (style === null && !endingStops) return null;
  const times = timesToSay(bar);
  return element(
    'barline',
    { location: 'right' },
    style === null ? null : tag('bar-style', style),
    endingStops ? endingElement(bar, repeats || !next ? 'stop' : 'discontinue') : null,
    repeats ? element('repeat', { direction: 'backward', ...(times === null ? {} : { times }) }) : null,
  );
}
