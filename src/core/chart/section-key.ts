import type { Key } from '../theory';
import { cellOf, headKind, placed } from './cell';
import { parseChart } from './parse';
import { type Reading, settle } from './settle';
import { before, isAgain, rewritePlace, TextChanges } from './text';
import { typedKey } from './typed-key';
import type { ChartPlace } from './types';
import { usesOf } from './uses';

/**
 * The chart text with a key written before the first bar of a section (by index), and the key in force written
 * where other bars would be read in the new one. `home` is the key of bars outside every key directive. Null where
 * the text cannot say it: no such section, or one that is written by its name alone.
 */
export function writeKey(
  text: string,
  reading: Reading,
  section: number,
  key: Key,
  home: Key,
): string | null {
  const { chart } = parseChart(text, reading.metre, reading.key);
  const own = chart.sections[section];
  const first = own && chart.bars[own.start];
  if (own === undefined || first === undefined || isAgain(chart, first)) return null;
  const inside = chart.bars
    .slice(own.start, own.start + own.length)
    .findIndex((bar) => bar.key !== first.key);
  const length = inside < 0 ? own.length : inside;
  const moved = new Set(Array.from({ length }, (_, at) => usesOf(chart, own.start + at)).flat());
  const meant = chart.bars.map((bar, index) => ({
    origin: index,
    bar: moved.has(index) ? { ...bar, key } : bar,
  }));
  const written = withKey(text, first.place, typedKey(key));
  return settle(written, meant, { metre: reading.metre, key: reading.key, text, chart, home });
}

/** The text with a key before a bar, in the place of one that stands there. */
function withKey(text: string, place: ChartPlace, typed: string): string {
  const cell = cellOf(new TextChanges(text), place);
  const old = cell.heads.find((head) => headKind(head) === 'key');
  return old === undefined
    ? rewritePlace(text, before(place), `${typed} `)
    : rewritePlace(text, placed(old, place.line), typed);
}
