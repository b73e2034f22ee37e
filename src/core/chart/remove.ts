import { type Cell, cellOf, headKind, placed } from './cell';
import { type EndingGone, endingGone } from './ending-gone';
import { classifyLine } from './lines';
import { passageStarts } from './order';
import { PUSH_SIGN } from './pushes';
import type { Token } from './scanner';
import { before, behind, isAgain, TextChanges } from './text';
import type { Chart, ChartBar, ChartPlace } from './types';
import { usesOf } from './uses';

/** Whether a bar is the whole of a repeat, which then goes with it. */
export const isWholeRepeat = (chart: Chart, index: number): boolean =>
  chart.bars[index]?.repeatEnd != null && passageStarts(chart)[index] === true;

const typedNumbers = (numbers: readonly number[]): string => numbers.map((number) => `${number}.`).join(',');

const signOf = (closes: boolean, opens: boolean, double: boolean): string =>
  closes ? (opens ? ':|:' : ':|') : opens ? '|:' : double ? '||' : '|';

class Removal {
  private readonly text: TextChanges;
  private readonly bar: ChartBar;
  private readonly cell: Cell;
  private readonly ending: EndingGone | null;
  /** The bar is the whole of its repeat, which goes with it. */
  private readonly wholeRepeat: boolean;

  constructor(
    text: string,
    private readonly chart: Chart,
    private readonly index: number,
    bar: ChartBar,
  ) {
    this.text = new TextChanges(text);
    this.bar = bar;
    this.cell = cellOf(this.text, bar.place);
    this.ending = endingGone(chart, index);
    this.wholeRepeat = isWholeRepeat(chart, index);
  }

  made(): string {
    this.renumberEndings();
    this.giveTails();
    this.dropPush();
    if (this.cell.follows || this.cell.leads) this.leaveLine();
    else this.dropLine();
    this.dropEmptySection();
    return this.text.made();
  }

  /** Signs that stay for the neighbours: the bar line before and the one after made one. */
  private signs() {
    const { before: left, after: right } = this.cell;
    const closesAfter = right?.closes === true && !this.wholeRepeat && this.ending?.signStays !== false;
    return {
      closesAfter,
      closes: left?.closes === true || closesAfter,
      opens: right?.opens === true || (left?.opens === true && !this.wholeRepeat),
      double: left?.double === true || right?.double === true,
    };
  }

  /** How often the passage is played, where the text has to say it anew. */
  private newTimes(): string {
    const times = this.ending?.times ?? null;
    return this.signs().closesAfter && this.cell.timesAfter === null && times !== null ? ` x${times}` : '';
  }

  /** What stood before the chords and belongs to the next bar now: a metre, a key, the number of its ending. */
  private heads(): readonly Token[] {
    return this.cell.heads.filter((token) => {
      const kind = headKind(token);
      return kind !== 'pickup' && (kind !== 'ending' || this.ending === null);
    });
  }

  /** From the bar line before the bar to the one after it, with a count that goes with its sign. */
  private whole(): ChartPlace {
    const { line, before: left, after: right, timesAfter, heads } = this.cell;
    const first = left ?? heads[0];
    const last = this.signs().closesAfter ? right : (timesAfter ?? right);
    const column = first ? first.place.column : this.bar.place.column;
    const end = last ? last.place.column + last.place.length : behind(this.bar.place).column;
    return { line, column, length: end - column };
  }

  /** The bar line that the two around the bar make together, with its count; null where the line needs none. */
  private sign(): string | null {
    const { before: left, after: right, timesBefore } = this.cell;
    const { closes, opens, double } = this.signs();
    const sign = signOf(closes, opens, double);
    if (sign === '|' && (left === null || right === null)) return null;
    return sign + (timesBefore ? ` ${said(timesBefore)}` : '') + this.newTimes();
  }

  /** The bar leaves a line in which others stay. */
  private leaveLine(): void {
    const whole = this.whole();
    const sign = this.sign();
    if (this.cell.leads) {
      const kept = this.newTo(this.next(), this.heads());
      if (sign === null) this.rewriteWithBlanks(whole, kept.map((head) => `${head} `).join(''));
      else this.text.rewrite(whole, this.spaced(sign, kept.join(' '), whole));
      return;
    }
    this.giveHeads(this.heads());
    if (sign !== null) this.text.rewrite(whole, sign);
    else {
      const left = this.text.line(whole.line).slice(0, whole.column - 1);
      const blanks = left.length - left.trimEnd().length;
      this.text.rewrite({ ...whole, column: whole.column - blanks, length: whole.length + blanks }, '');
    }
  }

  /** Sign and heads before the next bar of the line, as close or wide as they stood. */
  private spaced(sign: string, heads: string, whole: ChartPlace): string {
    const line = this.text.line(whole.line);
    const { before: left } = this.cell;
    const close = left !== null && line[left.place.column + left.place.length - 1] !== ' ';
    const numberGoes = this.ending?.numbers.get(this.index + 1)?.length === 0;
    const touched = !numberGoes && line[behind(whole).column - 1] !== ' ';
    const first = heads === '' || (close && sign.endsWith('|')) ? '' : ' ';
    const last = touched && (heads !== '' || !/[|:]$/.test(sign)) ? ' ' : '';
    return sign + first + heads + last;
  }

  private textOf(token: Token): string {
    const from = token.place.column - 1;
    return this.text.line(this.cell.line).slice(from, from + token.place.length);
  }

  /** Takes the blanks behind a place along with it. */
  private rewriteWithBlanks(place: ChartPlace, replacement: string): void {
    const rest = this.text.line(place.line).slice(place.column - 1 + place.length);
    const blanks = rest.length - rest.trimStart().length;
    this.text.rewrite({ ...place, length: place.length + blanks }, replacement);
  }

  /** The bar was alone in its line, which goes; what it held for its neighbours goes to their lines. */
  private dropLine(): void {
    const { line, before: left, after: right, timesBefore, timesAfter } = this.cell;
    const signs = this.signs();
    if (signs.closes) {
      const times = left?.closes ? timesBefore : timesAfter;
      this.closeBefore((times ? ` ${said(times)}` : '') + this.newTimes());
    }
    if (signs.opens && (left?.opens || right?.opens)) this.openBehind();
    this.giveHeads(this.heads());
    this.text.drop(line);
  }

  /** Ends a repeat behind the bar before. */
  private closeBefore(times: string): void {
    const previous = this.chart.bars[this.index - 1];
    if (previous === undefined || isAgain(this.chart, previous)) return;
    const { after } = cellOf(this.text, previous.place);
    const { line } = previous.place;
    if (after === null) this.text.rewrite(behind(previous.place), ` :|${times}`);
    else this.text.rewrite(placed(after, line), signOf(true, after.opens, false) + times);
  }

  /** The next bar in the text, unless its section is one used again. */
  private next(): ChartBar | null {
    const next = this.chart.bars[this.index + 1];
    return next === undefined || isAgain(this.chart, next) ? null : next;
  }

  /** Begins a repeat before the next bar. */
  private openBehind(): void {
    const next = this.next();
    if (next === null) return;
    const cell = cellOf(this.text, next.place);
    const { line } = next.place;
    const first = cell.heads[0];
    if (cell.before !== null) {
      const { closes, double } = cell.before;
      this.text.rewrite(placed(cell.before, line), double && !closes ? '||:' : signOf(closes, true, false));
    } else this.text.rewrite(before(first ? placed(first, line) : next.place), '|: ');
  }

  private giveHeads(heads: readonly Token[]): void {
    const next = this.next();
    if (next === null || heads.length === 0) return;
    const [first] = cellOf(this.text, next.place).heads;
    const place = first ? placed(first, next.place.line) : next.place;
    const given = this.newTo(next, heads);
    if (given.length > 0) this.text.rewrite(before(place), `${given.join(' ')} `);
  }

  /** As they are typed: those of some heads that a bar does not say itself. */
  private newTo(bar: ChartBar | null, heads: readonly Token[]): readonly string[] {
    const own = bar === null ? [] : cellOf(this.text, bar.place).heads;
    return heads
      .filter((head) => !own.some((token) => headKind(token) === headKind(head)))
      .map((token) => this.textOf(token));
  }

  /** A sign at the end of the bar goes to the bar before, from which the way now leads on. */
  private giveTails(): void {
    const previous = this.chart.bars[this.index - 1];
    const { tails } = this.cell;
    if (previous === undefined || isAgain(this.chart, previous) || tails.length === 0) return;
    const own = cellOf(this.text, previous.place).tails;
    const place = own[0] ? before(placed(own[0], previous.place.line)) : behind(previous.place);
    const given = tails.map((token) => this.textOf(token)).join(' ');
    this.text.rewrite(place, own[0] ? `${given} ` : ` ${given}`);
  }

  /** With the first bar goes what the next one's chord is pushed into. */
  private dropPush(): void {
    const next = this.next();
    if (this.index > 0 || next?.pushed !== true) return;
    this.text.rewrite({ ...next.place, length: PUSH_SIGN.length }, '');
  }

  private renumberEndings(): void {
    for (const [at, numbers] of this.ending?.numbers ?? []) {
      const bar = this.chart.bars[at];
      const label = bar && cellOf(this.text, bar.place).heads.find(({ kind }) => kind === 'ending');
      if (bar === undefined || label === undefined) continue;
      const place = placed(label, bar.place.line);
      if (numbers.length > 0) this.text.rewrite(place, typedNumbers(numbers));
      else this.rewriteNumberAway(place);
    }
  }

  /** Takes an ending number away so that its bar line and chords stand apart as bars do. */
  private rewriteNumberAway(place: ChartPlace): void {
    const line = this.text.line(place.line);
    const touches = line[place.column - 2] === '|' && line[place.column - 1 + place.length] === ' ';
    if (touches) this.text.rewrite(place, '');
    else this.rewriteWithBlanks(place, line[place.column - 2] === '|' ? ' ' : '');
  }

  /** A section that lost its only bar goes, with every use of its name. */
  private dropEmptySection(): void {
    const section = this.chart.sections[this.bar.section];
    if (section === undefined || section.name === null || section.length > 1) return;
    let heading = this.bar.place.line - 1;
    while (heading > 0 && classifyLine(this.text.line(heading), () => false).kind !== 'section') heading -= 1;
    if (heading > 0) this.text.drop(heading);
    for (const use of usesOf(this.chart, this.index)) {
      const bar = this.chart.bars[use];
      if (bar && use !== this.index) this.text.drop(bar.place.line);
    }
  }
}

const said = (token: Token): string => (token.kind === 'times' ? token.text : '');

/**
 * The chart text without a bar (index from 0, one that is written out). Repeat signs stay for their neighbours,
 * unless the bar was the whole of its repeat; a metre or key that it brought goes to the next bar; an ending, a
 * line or a section that loses its only bar goes with it. Comments stay.
 */
export function removeBar(text: string, chart: Chart, index: number): string {
  const bar = chart.bars[index];
  return bar === undefined ? text : new Removal(text, chart, index, bar).made();
}
