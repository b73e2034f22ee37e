import { barName, barNames } from '../../base';

/** More bars than this are counted instead of listed. */
const MOST_LISTED = 4;

/** Collects, while a file is read, what a teacher must be told about it; the same thing in many bars is said once. */
export class Remarks {
  private readonly places = new Map<string, number[]>();

  /** A sentence about the whole file. */
  say(sentence: string): void {
    if (!this.places.has(sentence)) this.places.set(sentence, []);
  }

  /** A sentence about a bar (index from 0): without its full stop, so that the bars can be named at its end. */
  inBar(sentence: string, bar: number): void {
    const bars = this.places.get(sentence) ?? [];
    if (bars.at(-1) !== bar) bars.push(bar);
    this.places.set(sentence, bars);
  }

  /** @param first the number of the first bar: 0 for a pickup. */
  sentences(first: 0 | 1): readonly string[] {
    return [...this.places].map(([sentence, bars]) => {
      const numbers = [...new Set(bars)].sort((one, other) => one - other).map((bar) => bar + first);
      return numbers.length === 0 ? sentence : `${sentence} (${barsNamed(numbers)}).`;
    });
  }
}

function barsNamed(numbers: readonly number[]): string {
  if (numbers.length <= MOST_LISTED) return barNames(numbers);
  return `${numbers.length} bars, the first of them ${barName(numbers[0] ?? 1)}`;
}
