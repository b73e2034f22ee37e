import { barTicks, type Metre, metreName, TICKS_PER_QUARTER } from '../../base';
import { CHART_METRES } from '../../chart';
import type { FoundBar, FoundMetre } from './found';
import type { Remarks } from './remarks';

/** How the values of a file are written in a lesson, so that every bar has a metre that a chart can have. */
export interface MetrePlan {
  /** The factor of every length; the tempo changes with it, so that nothing sounds otherwise. */
  readonly factor: number;
  /** One a bar. */
  readonly metres: readonly Metre[];
}

export const metreTicks = ({ count, unit }: FoundMetre): number => (TICKS_PER_QUARTER * 4 * count) / unit;

/** Ticks of a counted beat: three units where the metre is compound. */
export const metreBeat = ({ count, unit }: FoundMetre): number =>
  ((TICKS_PER_QUARTER * 4) / unit) * (unit >= 8 && count > 3 && count % 3 === 0 ? 3 : 1);

const sameAs = (metre: FoundMetre, other: FoundMetre): boolean =>
  metre.count === other.count && metre.unit === other.unit;

const known = (metre: FoundMetre): Metre | null => CHART_METRES.find((each) => sameAs(each, metre)) ?? null;

/**
 * Metres that are the same music in other note values: 3/8 doubled is 3/4, 9/4 halved is 9/8 (each a metre of the trade
 * with as many beats of as many parts; common practice, no source).
 */
const REWRITTEN: readonly { readonly from: string; readonly to: Metre; readonly how: string }[] = [
  { from: '3/8', to: { count: 3, unit: 4 }, how: 'with every value doubled' },
  { from: '4/8', to: { count: 4, unit: 4 }, how: 'with every value doubled' },
  { from: '5/8', to: { count: 5, unit: 4 }, how: 'with every value doubled' },
  { from: '9/16', to: { count: 9, unit: 8 }, how: 'with every value doubled' },
  { from: '9/4', to: { count: 9, unit: 8 }, how: 'with every value halved' },
  { from: '3/2', to: { count: 3, unit: 4 }, how: 'with every value halved' },
  { from: '4/2', to: { count: 4, unit: 4 }, how: 'with every value halved' },
  { from: '6/4', to: { count: 6, unit: 8 }, how: 'with every value halved' },
  { from: '12/4', to: { count: 12, unit: 8 }, how: 'with every value halved' },
  { from: '12/16', to: { count: 12, unit: 8 }, how: 'with every value doubled' },
  { from: '6/16', to: { count: 6, unit: 8 }, how: 'with every value doubled' },
];

/** The shortest metre of a chart that a bar of this length fits into; null for a longer one. */
const holding = (length: number): Metre | null =>
  [...CHART_METRES]
    .sort((one, other) => barTicks(one) - barTicks(other))
    .find((metre) => barTicks(metre) >= length) ?? null;

/** The whole piece in other note values, where that is the same music. */
function rewrite(bars: readonly FoundBar[], remarks: Remarks): MetrePlan | null {
  const metre = bars.find(({ pickup }) => !pickup)?.metre;
  const rewritten = REWRITTEN.find(({ from }) => metre !== undefined && from === metreName(metre));
  if (metre === undefined || rewritten === undefined) return null;
  if (!bars.every((bar) => bar.pickup || sameAs(bar.metre, metre))) return null;
  const { from, to, how } = rewritten;
  remarks.say(`The metre ${from} is written as ${metreName(to)} ${how}; it sounds the same.`);
  return { factor: barTicks(to) / metreTicks(metre), metres: bars.map(() => to) };
}

/**
 * Gives every bar a metre that a chart knows. A metre that the whole piece has is rewritten in other note values
 * where that is the same music; a few bars in another metre become longer, with silence at their end, and are named.
 * @returns null where most of the piece has no such metre
 */
export function planMetres(bars: readonly FoundBar[], remarks: Remarks): MetrePlan | null {
  const rewritten = rewrite(bars, remarks);
  if (rewritten !== null) return rewritten;
  const metres: Metre[] = [];
  let changed = 0;
  for (const [index, bar] of bars.entries()) {
    const metre = bar.pickup ? (bars[index + 1]?.metre ?? bar.metre) : bar.metre;
    const fitting = known(metre) ?? holding(metreTicks(metre));
    if (fitting === null) return null;
    if (known(metre) === null && !bar.pickup) {
      changed += 1;
      remarks.inBar(
        `A chart has no metre ${metreName(metre)}: it is written as ${metreName(fitting)}, with silence at the end`,
        index,
      );
    }
    metres.push(fitting);
  }
  return changed * 2 > bars.length ? null : { factor: 1, metres };
}
