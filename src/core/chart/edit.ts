import type { Metre } from '../base';
import type { Key } from '../theory';
import { barSignature } from './harmony';
import { parseChart } from './parse';
import { barText } from './print';
import { scanLine, type Token } from './scanner';
import type { Chart, ChartBar, ChartPlace } from './types';

/** A change to one bar, counted from 0 as written. */
export type BarEdit =
  /** `text` is what stands between the bar lines: `Am7 D7`, `%`, `N.C.`. */
  | { readonly kind: 'write'; readonly bar: number; readonly text: string }
  /** A new bar before the bar; `bar` may be the number of bars, to add one at the end. */
  | { readonly kind: 'insert'; readonly bar: number; readonly text: string }
  /** A new bar behind the bar, in its line and section. */
  | { readonly kind: 'append'; readonly bar: number; readonly text: string }
  | { readonly kind: 'remove'; readonly bar: number };

/**
 * The chart text with one bar changed, everything else letter for letter as typed; a `%` or slash whose meaning
 * the change would alter is written out. Null where the text cannot say it: no such bar, a bar of a section
 * that is written by its name alone, or a `text` that holds bar lines, comments or line ends.
 */
export function editBar(text: string, metre: Metre, edit: BarEdit, key: Key | null = null): string | null {
  const before = parseChart(text, metre, key).chart;
  if (edit.kind !== 'remove' && !/^[^|;\r\n]*[^|;\s:][^|;\r\n]*$/.test(edit.text)) return null;
  const again = (bar: ChartBar | undefined) =>
    bar !== undefined && before.sections[bar.section]?.again === true;
  const bar = before.bars[edit.bar];
  const atEnd = edit.kind === 'insert' && edit.bar === before.bars.length;
  const target = atEnd ? before.bars[edit.bar - 1] : bar;
  if (atEnd && !target) return text === '' ? `| ${edit.text.trim()} |` : `${text}\n| ${edit.text.trim()} |`;
  if (!target || again(target)) return null;
  const edited = splice(text, target, edit, atEnd);
  const following = edit.kind === 'insert' ? bar : before.bars[edit.bar + 1];
  if (!following || again(following)) return edited;
  const index = edit.bar + { write: 1, insert: 1, append: 2, remove: 0 }[edit.kind];
  const now = parseChart(edited, metre, key).chart.bars[index];
  if (!now || barSignature(now) === barSignature(following)) return edited;
  return rewritePlace(edited, now.place, barText(following));
}

/** What stands between the bar lines as typed; null for a bar of a section that is written by its name alone. */
export function typedBar(text: string, chart: Chart, bar: number): string | null {
  const written = chart.bars[bar];
  if (!written || chart.sections[written.section]?.again === true) return null;
  const { start, end } = rangeOf(text, written.place);
  return text.slice(start, end);
}

/** The chart text with what stands at a place written anew: the suggestion of a problem, for example. */
export function rewritePlace(text: string, place: ChartPlace, replacement: string): string {
  const { start, end } = rangeOf(text, place);
  return text.slice(0, start) + replacement + text.slice(end);
}

function splice(text: string, bar: ChartBar, edit: BarEdit, atEnd: boolean): string {
  const { start, end } = rangeOf(text, bar.place);
  switch (edit.kind) {
    case 'write':
      return text.slice(0, start) + edit.text.trim() + text.slice(end);
    case 'insert':
      return atEnd
        ? `${text.slice(0, end)} | ${edit.text.trim()}${text.slice(end)}`
        : `${text.slice(0, start)}${edit.text.trim()} | ${text.slice(start)}`;
    case 'append':
      return `${text.slice(0, end)} | ${edit.text.trim()}${text.slice(end)}`;
    case 'remove':
      return removed(text, bar);
  }
}

interface Range {
  readonly start: number;
  readonly end: number;
}

/** Where a line of the text begins, counted from 0. */
function lineStart(text: string, line: number): number {
  const ends = /\r\n|\r|\n/g;
  for (let passed = 1; passed < line; passed += 1) {
    if (!ends.exec(text)) return text.length;
  }
  return ends.lastIndex;
}

function rangeOf(text: string, place: ChartPlace): Range {
  const start = lineStart(text, place.line) + place.column - 1;
  return { start, end: start + place.length };
}

type BarLine = Extract<Token, { kind: 'bar line' }>;
const isPlain = (line: BarLine | undefined): boolean =>
  line !== undefined && !line.opens && !line.closes && !line.double;

/** Takes the bar away with the plain bar line behind it, or before it; repeat signs stay for their neighbours. */
function removed(text: string, bar: ChartBar): string {
  const offset = lineStart(text, bar.place.line);
  const { start, end } = rangeOf(text, bar.place);
  const [line = ''] = text.slice(offset).split(/\r\n|\r|\n/, 1);
  const bars = scanLine(line, 1).filter((token): token is BarLine => token.kind === 'bar line');
  const at = (token: BarLine) => offset + token.place.column - 1;
  const previous = bars.findLast((token) => at(token) < start);
  const next = bars.find((token) => at(token) >= end);
  if (next && isPlain(next)) {
    const after = at(next) + next.place.length;
    return text.slice(0, start) + text.slice(after).replace(/^[ \t]+/, '');
  }
  if (previous && isPlain(previous))
    return text.slice(0, at(previous)) + text.slice(end).replace(/^[ \t]+/, '');
  if (previous?.opens && next?.closes) {
    return `${text.slice(0, at(previous))}|${text.slice(at(next) + next.place.length)}`;
  }
  return text.slice(0, start) + text.slice(end).replace(/^[ \t]+/, '');
}
