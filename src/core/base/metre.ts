import { TICKS_PER_QUARTER, type Ticks, ticks } from './units';

/** A time signature: `count` notes of value 1/`unit` a bar. */
export interface Metre {
  readonly count: number;
  readonly unit: 2 | 4 | 8;
}

export const COMMON_TIME: Metre = { count: 4, unit: 4 };

/** Length of the written unit (a quarter in 4/4, an eighth in 6/8). */
export const unitTicks = (metre: Metre): Ticks => ticks((TICKS_PER_QUARTER * 4) / metre.unit);

/** Compound metres are felt in dotted beats: 6/8 in two, 9/8 in three, 12/8 in four. */
export const isCompound = (metre: Metre): boolean =>
  metre.unit === 8 && metre.count > 3 && metre.count % 3 === 0;

/** Metres in eighths that are felt in quarters, the last of them a dotted one where the count is odd: 7/8 is 2+2+3. */
const isFeltInQuarters = (metre: Metre): boolean =>
  metre.unit === 8 && metre.count !== 1 && metre.count % 3 !== 0;

/** Whether the beats of a bar differ in length, as in 7/8: two quarters and a dotted one. */
export const isUneven = (metre: Metre): boolean => isFeltInQuarters(metre) && metre.count % 2 === 1;

/**
 * Length of the beat that a tempo refers to: a dotted quarter in compound time, a quarter in 7/8, whose last beat is
 * longer by an eighth (common practice, no source: such music is marked in quarters or in eighths).
 */
export const beatTicks = (metre: Metre): Ticks => {
  const unit = unitTicks(metre);
  return ticks(isCompound(metre) ? unit * 3 : isFeltInQuarters(metre) ? unit * 2 : unit);
};

export const barTicks = (metre: Metre): Ticks => ticks(unitTicks(metre) * metre.count);

/** Counted beats in a bar: 4 in 4/4, 3 in 3/4, 2 in 6/8, 3 in 7/8. */
export const beatsInBar = (metre: Metre): number => Math.floor(barTicks(metre) / beatTicks(metre));

/** A counted beat of a bar. */
export interface MetreBeat {
  /** From 0. */
  readonly index: number;
  /** Ticks from the beginning of the bar. */
  readonly start: number;
  readonly length: number;
}

/** The counted beats of a bar in order; in an uneven metre the last one takes what is left over. */
export function beatsOf(metre: Metre): readonly MetreBeat[] {
  const beat = beatTicks(metre);
  const count = beatsInBar(metre);
  return Array.from({ length: count }, (_, index) => ({
    index,
    start: index * beat,
    length: index === count - 1 ? barTicks(metre) - index * beat : beat,
  }));
}

/** The counted beat in which a tick of a bar lies; what lies behind the bar belongs to its last beat. */
export function beatAt(metre: Metre, tick: number): MetreBeat {
  const beat = beatTicks(metre);
  const last = beatsInBar(metre) - 1;
  const index = Math.max(0, Math.min(last, Math.floor(tick / beat)));
  return { index, start: index * beat, length: index === last ? barTicks(metre) - last * beat : beat };
}

/** Whether a beat is divided in three: a dotted quarter. */
export const isDotted = ({ length }: MetreBeat): boolean => length === TICKS_PER_QUARTER * 1.5;

/**
 * How many beats belong together, beats of a bar of five are three and two (common practice, no source; the standard
 * division of 5/4 in published tunes is 3+2 or 2+3). A bar that is not divided is one group.
 */
export const beatGroups = (metre: Metre): readonly number[] =>
  metre.count === 5 && metre.unit !== 8 ? [3, 2] : [beatsInBar(metre)];

export const sameMetre = (one: Metre, other: Metre): boolean =>
  one.count === other.count && one.unit === other.unit;

/** `7/8`; any time signature has a name, whether a lesson can be in it or not. */
export const metreName = ({ count, unit }: { readonly count: number; readonly unit: number }): string =>
  `${count}/${unit}`;
