import type { Metre } from '../base';
import type { Key } from '../theory';
import { placeOf, readBar } from './bar-reader';
import { readDirective } from './directives';
import { type Draft, settleEndings, type WrittenSign } from './endings';
import { MOST_BARS, type PickupLength, pickupMetre } from './limits';
import { classifyLine, leadingName, linesOf, rehearsalLetters, unnamedWords } from './lines';
import { beginsBar, readNavigation } from './navigation';
import { ProblemList } from './problems';
import { withTail } from './pushes';
import { Repeats } from './repeats';
import { scanLine, type Token, type Word } from './scanner';
import { Sections } from './sections';
import type { Chart, ChartBar, ChartPlace, ParsedChart } from './types';
import { reportUnplayed } from './unplayed';

type BarLine = Extract<Token, { kind: 'bar line' }>;

/** `|` and nothing else. */
const isPlain = (line: BarLine): boolean => !line.closes && !line.opens && !line.double;

class ChartReader {
  private readonly problems = new ProblemList();
  private readonly bars: Draft[] = [];
  private readonly sections = new Sections();
  private readonly repeats = new Repeats(this.bars, this.problems);
  private metre: Metre;
  private key: Key | null = null;
  private full = false;
  /** What a directive or an ending number said about the next bar. */
  private nextPickup: PickupLength | null = null;
  /** Signs of the way that stand in the bar being read, or before the next one. */
  private nextSigns: WrittenSign[] = [];
  private nextEnding: { readonly numbers: readonly number[]; readonly place: ChartPlace } | null = null;

  constructor(
    private readonly chartMetre: Metre,
    private readonly pieceKey: Key | null,
    /** Lines, from 0, that are a letter alone and no bar. */
    private readonly letters: ReadonlySet<number>,
  ) {
    this.metre = chartMetre;
  }

  readLine(text: string, line: number): void {
    if (this.full) return;
    const read = classifyLine(text, (name) => this.sections.has(name));
    if (read.kind === 'blank') return;
    const place = { line, column: read.column, length: read.text.length };
    if (read.kind === 'section') this.openSection(read.name, place);
    else if (read.kind === 'again') this.repeatSection(read.name, place);
    else if (read.kind === 'bars' && this.letters.has(line - 1)) {
      this.problems.push({
        ...place,
        message: `“${read.text}” alone on a line: a section is written ${read.text}: or [${read.text}], and a bar of this chord | ${read.text} |.`,
        suggestion: `${read.text}:`,
      });
    } else if (read.kind === 'bars') this.readBars(scanLine(read.said, line));
    else {
      this.problems.push({
        ...place,
        ...unnamedWords(read.text),
      });
    }
  }

  finish(): ParsedChart {
    this.repeats.dropOpen();
    if (this.nextEnding) {
      this.problems.push({
        ...this.nextEnding.place,
        message: 'An ending is announced here, but no bar follows.',
      });
    }
    settleEndings(this.bars, this.sections.starts(), this.problems);
    for (const { sign, place } of this.nextSigns) {
      this.problems.push({ ...place, message: `(${sign}) stands before a bar, but no bar follows.` });
    }
    const bars = this.finishedBars();
    const chart: Chart = { metre: this.chartMetre, sections: this.sections.finished(bars.length), bars };
    const signs = this.bars.flatMap((draft, bar) => draft.signs.map((each) => ({ ...each, bar })));
    reportUnplayed(chart, signs, this.problems);
    return { chart, problems: this.problems.inOrder() };
  }

  /** The bars with the chords that later ones push into their ends, and their signs without places. */
  private finishedBars(): readonly ChartBar[] {
    return this.bars.map(({ doubled, again, signs, early, ...bar }, index): ChartBar => {
      const next = this.bars[index + 1];
      const spans = next?.early ? withTail(bar.spans, bar.metre, next.spans[0]?.harmony) : bar.spans;
      return {
        ...bar,
        spans,
        ...(early ? { pushed: true } : {}),
        ...(spans === bar.spans ? {} : { tail: true }),
        ...(signs.length === 0 ? {} : { navigation: signs.map(({ sign }) => sign) }),
      };
    });
  }

  private openSection(name: string, place: ChartPlace): void {
    if (!this.hasRoom(place)) return;
    if (this.sections.has(name)) {
      this.problems.push({
        ...place,
        message: `There is a section “${name}” already; its name alone, without the colon, repeats it.`,
      });
    }
    this.sections.open(name, this.bars.length);
  }

  /** Writes a known section out again. */
  private repeatSection(name: string, place: ChartPlace): void {
    const section = this.sections.find(name, this.bars.length);
    if (!section) return;
    const copied = this.bars.slice(section.start, section.end);
    if (copied.length === 0) {
      this.problems.push({ ...place, message: `The section “${section.name}” has no bars to repeat yet.` });
      return;
    }
    this.repeats.dropOpen(section.start, section.end);
    this.sections.repeat(section.name, this.bars.length);
    for (const bar of copied) {
      if (!this.hasRoom(place)) break;
      this.bars.push({
        ...bar,
        number: this.nextNumber(),
        section: this.sections.last,
        pickup: false,
        again: true,
        // The way leads through the bars where they are written.
        signs: [],
        place,
      });
    }
    const last = copied[copied.length - 1];
    if (last) {
      this.metre = last.metre;
      this.key = last.key;
    }
  }

  private readBars(tokens: readonly Token[]): void {
    let words: Word[] = [];
    let afterPlainLine: ChartPlace | null = null;
    let closed: Draft | null = null;
    let begun = false;
    for (const token of tokens) {
      if (this.full) return;
      if (token.kind === 'word') words.push(token);
      else if (token.kind === 'times') this.repeats.setTimes(token, closed);
      else if (token.kind !== 'bar line') this.readBeforeBar(token, words.length > 0);
      else {
        const named = !begun && this.asksForName(words);
        const bar = named ? null : this.closeBar(words, afterPlainLine, token);
        begun = true;
        words = [];
        closed = this.readBarLine(token, bar);
        afterPlainLine = isPlain(token) ? token.place : null;
      }
    }
    this.closeBar(words, null, null);
  }

  /** The name of a section that stands in front of its bars is no bar. */
  private asksForName(words: readonly Word[]): boolean {
    const name = leadingName(words.map(({ text }) => text).join(' '));
    const place = placeOf(words);
    if (name === null || place === null) return false;
    this.problems.push({
      ...place,
      message: `“${name}” looks like a section name: write it as ${name}: on a line of its own, above its bars.`,
    });
    return true;
  }

  /** Gives the bar that ends a repeat here, for a count to follow. */
  private readBarLine(line: BarLine, closing: Draft | null): Draft | null {
    const closed = line.closes ? this.repeats.close(line.place, closing) : null;
    if (line.double) this.lastBarDoubled();
    if (line.opens) this.repeats.open(line.place);
    return closed;
  }

  private readBeforeBar(token: Extract<Token, { kind: 'ending' | 'directive' }>, tooLate: boolean): void {
    const sign = token.kind === 'directive' ? readNavigation(token.text) : null;
    if (sign !== null) this.nextSigns.push({ sign, place: token.place });
    else if (tooLate) {
      const what = token.kind === 'ending' ? 'An ending number' : 'What stands in brackets';
      const message = `${what} belongs at the beginning of a bar, right after its bar line.`;
      this.problems.push({ ...token.place, message });
    } else if (token.kind === 'ending') this.nextEnding = token;
    else this.readDirective(token.text, token.place);
  }

  private readDirective(text: string, place: ChartPlace): void {
    const directive = readDirective(text, this.metre, this.bars.length === 0);
    switch (directive.kind) {
      case 'metre':
        this.metre = directive.metre;
        break;
      case 'key':
        this.key = directive.key;
        break;
      case 'pickup':
        this.nextPickup = directive.length;
        break;
      case 'problem': {
        const { kind: _, ...problem } = directive;
        this.problems.push({ ...place, ...problem });
      }
    }
  }

  /** Ends what was collected since the last bar line; gives the bar, if there is one. */
  private closeBar(words: readonly Word[], before: ChartPlace | null, line: BarLine | null): Draft | null {
    const place = placeOf(words);
    if (place) return this.addBar(words, place);
    this.giveSignsBack();
    if (!before || !line || !isPlain(line)) return null;
    const between = {
      line: before.line,
      column: before.column,
      length: line.place.column + line.place.length - before.column,
    };
    this.problems.push({
      ...between,
      message: 'This bar is empty: write a chord, % or N.C. between its bar lines.',
    });
    return this.addBar(words, between);
  }

  /** What stands at the end of a bar, and is written after its bar line, belongs to the bar before. */
  private giveSignsBack(): void {
    const bar = this.bars[this.bars.length - 1];
    const back = this.nextSigns.filter(({ sign }) => !beginsBar(sign));
    if (bar === undefined || bar.again || back.length === 0) return;
    bar.signs = [...bar.signs, ...back];
    this.nextSigns = this.nextSigns.filter(({ sign }) => beginsBar(sign));
  }

  private addBar(words: readonly Word[], place: ChartPlace): Draft | null {
    if (!this.hasRoom(place)) return null;
    const previous = this.bars[this.bars.length - 1] ?? null;
    const pickup = this.nextPickup;
    const metre = pickup === null ? this.metre : pickupMetre(pickup, this.metre);
    const read = readBar(words, metre, this.key ?? this.pieceKey, previous, this.problems);
    if (read.pushed && previous === null) {
      this.problems.push({
        ...place,
        message:
          'The first chord cannot be pushed: no bar stands before it to come into. Write a pickup, or no <.',
      });
    }
    const bar: Draft = {
      number: pickup === null ? this.nextNumber() : 0,
      section: this.sections.forBar(this.bars.length),
      metre,
      pickup: pickup !== null,
      key: this.key,
      spans: read.spans,
      early: read.pushed && previous !== null,
      repeatStart: this.repeats.beginsAt(this.bars.length),
      repeatEnd: null,
      ending: this.nextEnding?.numbers ?? null,
      doubled: false,
      again: false,
      signs: this.nextSigns,
      place,
    };
    this.nextPickup = null;
    this.nextEnding = null;
    this.nextSigns = [];
    this.bars.push(bar);
    return bar;
  }

  private nextNumber(): number {
    return (this.bars[this.bars.length - 1]?.number ?? 0) + 1;
  }

  private hasRoom(place: ChartPlace): boolean {
    if (this.bars.length < MOST_BARS && this.sections.count < MOST_BARS) return true;
    if (!this.full) {
      this.problems.push({
        ...place,
        message: `A chart holds at most ${MOST_BARS} bars or sections; the rest is left out.`,
      });
    }
    this.full = true;
    return false;
  }

  private lastBarDoubled(): void {
    const bar = this.bars[this.bars.length - 1];
    if (bar) bar.doubled = true;
  }
}

/**
 * Reads a chart as typed. `metre` holds until the chart changes it; `key`, where one is known, gives Roman
 * numerals and number charts their chords until the chart names a key. What is wrong is listed with its place
 * and a sentence, in the order of the text, and the rest of the chart stands. Never throws; linear in the text.
 */
export function parseChart(text: string, metre: Metre, key: Key | null = null): ParsedChart {
  const lines = linesOf(text);
  const reader = new ChartReader(metre, key, rehearsalLetters(lines));
  lines.forEach((line, index) => {
    reader.readLine(line, index + 1);
  });
  return reader.finish();
}
