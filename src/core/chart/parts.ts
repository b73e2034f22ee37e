import { barTicks, beatWords, type Metre, rememberedFor, sameMetre } from '../base';
import { sameEnding } from './endings';
import { type Neighbours, neighboursOf } from './order';
import type { Chart } from './types';

/** How a bar is written that may be only a part of a whole one. */
export interface WrittenMetre {
  /** What is counted in it, and shown where it is new. */
  readonly metre: Metre;
  /** Ticks of the whole bar that are played before it: those that a pickup lacks. */
  readonly from: number;
}

/**
 * The metre in which each bar is written, worked out once for each chart. A pickup has the end of a bar in the chart's
 * metre; so have the two parts of a bar that a repeat or a section divides, and the last bar, if the pickup completes
 * it: none of them changes the metre (E. Gould, "Behind Bars", 2011, upbeats and divided bars, from memory).
 */
export const writtenMetres = rememberedFor((chart: Chart): readonly WrittenMetre[] => {
  const parts = new Parts(chart);
  return chart.bars.map(({ metre, pickup }, index): WrittenMetre => {
    const whole = parts.wholes[index] ?? metre;
    const missing = barTicks(whole) - barTicks(metre);
    if (pickup) return { metre: whole, from: Math.max(0, missing) };
    if (missing <= 0 || !parts.isPart(index)) return { metre, from: 0 };
    return { metre: whole, from: parts.follows(index) ? missing : 0 };
  });
});

/**
 * Says where ticks of a bar lie, counted as under the staff: the one beat of a pickup in four is `4`.
 * @param behind - the metre behind the chart's last bar
 */
export function countedIn(chart: Chart, bar: number, behind: Metre): (tick: number) => string {
  const { metre, from } = writtenMetres(chart)[bar] ?? { metre: behind, from: 0 };
  return (tick) => beatWords(from + tick, metre);
}

class Parts {
  /** The metre of the whole bars around each bar: of the last one before it that is no shorter than the one before that. */
  readonly wholes: readonly Metre[];
  private readonly neighbours: Neighbours;

  constructor(private readonly chart: Chart) {
    this.wholes = wholesOf(chart);
    this.neighbours = neighboursOf(chart);
  }

  /** Whether the bar that is played before a bar, each time, lacks just what it has. */
  follows = (index: number): boolean => this.all(this.neighbours.before[index] ?? [], index, false);

  /** Whether a bar is made whole by what is played before or after it, whenever it is played. */
  isPart = (index: number): boolean =>
    this.follows(index) || this.all(this.neighbours.after[index] ?? [], index, true);

  private all(others: readonly (number | null)[], index: number, last: boolean): boolean {
    // At the end of the music the pickup is what the last bar lacks.
    const complete = (other: number | null): boolean =>
      other === null
        ? last && this.chart.bars[0]?.pickup === true && this.complete(index, 0)
        : this.complete(index, other);
    return others.length > 0 && others.every(complete);
  }

  private complete(index: number, other: number): boolean {
    const [one, two] = [this.chart.bars[index], this.chart.bars[other]];
    const whole = this.wholes[index];
    if (one === undefined || two === undefined || whole === undefined) return false;
    if (Math.abs(index - other) === 1 && !divides(this.chart, Math.max(index, other))) return false;
    return barTicks(one.metre) + barTicks(two.metre) === barTicks(whole);
  }
}

/** Whether more than a bar line stands before a bar: a repeat, an ending or a section begins or ends there. */
function divides({ bars }: Pick<Chart, 'bars'>, index: number): boolean {
  const [before, bar] = [bars[index - 1], bars[index]];
  if (before === undefined || bar === undefined) return true;
  const inside = before.section === bar.section && sameEnding(before, bar);
  return !inside || before.repeatEnd !== null || bar.repeatStart;
}

/** A pickup belongs to the metre of the bars that it leads into, where two of them have it; else to the chart's. */
function wholeOfPickup({ bars: [pickup, first, second], metre }: Chart): Metre {
  if (pickup === undefined || first === undefined || second === undefined) return metre;
  const leads = sameMetre(first.metre, second.metre) && barTicks(first.metre) > barTicks(pickup.metre);
  return leads ? first.metre : metre;
}

/** A shorter bar after whole ones, and all short ones after it, are held against those. */
function wholesOf(chart: Chart): readonly Metre[] {
  const { bars, metre } = chart;
  let whole = metre;
  return bars.map((bar, index) => {
    if (bar.pickup) return wholeOfPickup(chart);
    const next = bars[index + 1];
    const goesOn = next && sameMetre(next.metre, bar.metre) && !divides({ bars }, index + 1);
    if (barTicks(bar.metre) >= barTicks(whole) || goesOn) whole = bar.metre;
    return whole;
  });
}
