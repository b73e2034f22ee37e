import { classifyLine } from './lines';
import { scanLine, type Token } from './scanner';
import type { Chart, ChartBar, ChartPlace } from './types';

export type BarLine = Extract<Token, { kind: 'bar line' }>;

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

/** The chart text with what stands at a place written anew: the suggestion of a problem, for example. */
export function rewritePlace(text: string, place: ChartPlace, replacement: string): string {
  const { start, end } = rangeOf(text, place);
  return text.slice(0, start) + replacement + text.slice(end);
}

/** What stands at a place. */
export function textAt(text: string, place: ChartPlace): string {
  const { start, end } = rangeOf(text, place);
  return text.slice(start, end);
}

/** A section written by its name alone has no text for its bars. */
export const isAgain = (chart: Chart, bar: ChartBar): boolean => chart.sections[bar.section]?.again === true;

/** The beginning of a place, without length. */
export const before = (place: ChartPlace): ChartPlace => ({ ...place, length: 0 });

/** The end of a place, without length. */
export const behind = (place: ChartPlace): ChartPlace => ({
  ...place,
  column: place.column + place.length,
  length: 0,
});

/** The tokens of a line of bars, its comment aside, counted as line 1. */
export function tokensOf(line: string): readonly Token[] {
  const read = classifyLine(line, () => false);
  return read.kind === 'bars' ? scanLine(read.said, 1) : [];
}

interface Change {
  readonly place: ChartPlace;
  readonly replacement: string;
}

/** Changes of a text, collected first and made together, so that places stay true meanwhile. */
export class TextChanges {
  private readonly lines: { text: string; end: string }[];
  private readonly changes: Change[] = [];
  private readonly dropped = new Set<number>();

  constructor(text: string) {
    const parts = text.split(/(\r\n|\r|\n)/);
    this.lines = parts.flatMap((part, index) =>
      index % 2 === 0 ? [{ text: part, end: parts[index + 1] ?? '' }] : [],
    );
  }

  /** A line (from 1) as it was. */
  line(number: number): string {
    return this.lines[number - 1]?.text ?? '';
  }

  rewrite(place: ChartPlace, replacement: string): void {
    this.changes.push({ place, replacement });
  }

  /** Takes what a line says away; its comment stays on the line, and a line without one goes. */
  drop(number: number): void {
    const text = this.line(number);
    const comment = text.indexOf(';');
    if (comment < 0) this.dropped.add(number);
    else this.rewrite({ line: number, column: 1, length: comment }, '');
  }

  /** The text with all changes made; two before the same sign stand in the order they were asked for. */
  made(): string {
    const ordered = this.changes
      .map((change, order) => ({ ...change, order }))
      .sort(
        (one, other) =>
          other.place.column - one.place.column ||
          Math.sign(other.place.length) - Math.sign(one.place.length) ||
          other.order - one.order,
      );
    for (const { place, replacement } of ordered) {
      const line = this.lines[place.line - 1];
      if (line !== undefined) line.text = spliced(line.text, place, replacement);
    }
    this.dropDoubledBlanks();
    const kept = this.lines.filter((_, index) => !this.dropped.has(index + 1));
    const last = kept[kept.length - 1];
    const hadEnd = this.lines[this.lines.length - 1];
    if (last !== undefined && last !== hadEnd) last.end = '';
    return kept.map(({ text, end }) => text + end).join('');
  }

  /** Where lines went between two blank ones, one blank is enough. */
  private dropDoubledBlanks(): void {
    for (const number of [...this.dropped].sort((one, other) => one - other)) {
      let above = number - 1;
      while (this.dropped.has(above)) above -= 1;
      let below = number + 1;
      while (this.dropped.has(below)) below += 1;
      const blank = (at: number) => at < 1 || (at <= this.lines.length && this.line(at).trim() === '');
      if (below <= this.lines.length && blank(above) && blank(below)) this.dropped.add(below);
    }
  }
}

function spliced(text: string, { column, length }: ChartPlace, replacement: string): string {
  return text.slice(0, column - 1) + replacement + text.slice(column - 1 + length);
}
