import type { Draft } from './endings';
import { MOST_TIMES } from './limits';
import type { ProblemList } from './problems';
import type { Token } from './scanner';
import type { ChartPlace } from './types';

/** The repeats of a chart while it is read: which one is open, where each ends and how often it is played. */
export class Repeats {
  /** The place of a `|:` that no `:|` has closed yet, and its bar. */
  private opened: { readonly place: ChartPlace; readonly bar: number } | null = null;

  constructor(
    /** The bars read so far, whose signs are set here. */
    private readonly bars: readonly Draft[],
    private readonly problems: ProblemList,
  ) {}

  /** Whether the repeat that is open begins with `bar`, counted from 0. */
  beginsAt(bar: number): boolean {
    return this.opened?.bar === bar;
  }

  /** `|:` before the next bar. */
  open(place: ChartPlace): void {
    if (this.opened) {
      this.problems.push({
        ...place,
        message: 'A repeat begins here before the one before it ends; write :| where the first one ends.',
      });
      this.forget();
    }
    this.opened = { place, bar: this.bars.length };
  }

  /** `:|` after `closing`, or after the last bar read: gives the bar that ends a repeat, for a count to follow. */
  close(place: ChartPlace, closing: Draft | null): Draft | null {
    const bar = closing ?? this.bars[this.bars.length - 1];
    this.opened = null;
    if (!bar || bar.again) {
      const message = bar
        ? 'A section written by its name alone cannot end a repeat; write its bars out.'
        : 'A repeat ends here, but there is no bar before it to repeat.';
      this.problems.push({ ...place, message });
      return null;
    }
    if (bar.repeatEnd !== null) {
      this.problems.push({
        ...place,
        message: 'The repeat before this :| has ended there already; leave one of the two out.',
      });
    }
    bar.repeatEnd ??= 2;
    return bar;
  }

  /** `x3` after the end of a repeat: how often it is played in all. */
  setTimes(token: Extract<Token, { kind: 'times' }>, bar: Draft | null): void {
    const { count } = token;
    if (!bar) {
      this.problems.push({
        ...token.place,
        message: `${token.text} says how often to play, and stands right after :|.`,
      });
    } else if (count < 2 || count > MOST_TIMES) {
      this.problems.push({
        ...token.place,
        message: `A repeat is played 2 to ${MOST_TIMES} times in all, not ${count}.`,
      });
    } else bar.repeatEnd = count;
  }

  /** A repeat that is still open and begins from bar `start` up to, but without, `end` never ends: says so. */
  dropOpen(start = 0, end = Number.POSITIVE_INFINITY): void {
    if (!this.opened || this.opened.bar < start || this.opened.bar >= end) return;
    this.problems.push({
      ...this.opened.place,
      message: 'This repeat never ends; write :| after its last bar.',
    });
    this.forget();
  }

  private forget(): void {
    const bar = this.opened && this.bars[this.opened.bar];
    if (bar) bar.repeatStart = false;
    this.opened = null;
  }
}
