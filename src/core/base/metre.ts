import { TICKS_PER_QUARTER, type Ticks, ticks } from './units';

/** A time signature: `count` notes of value 1/`unit` a bar. */
export interface Metre {
  readonly count: number;
  readonly unit: 2 | 4 | 8;
}

export const COMMON_TIME: Metre = { count: 4, unit: 4 };

/** Length of the written unit (a quarter in 4/4, an eighth in 6/8). */
export const unitTicks = (metre: Metre): Ticks => ticks((TICKS_PER_QUARTER * 4) / metre.unit);

/** Compound metres are felt in dotted beats: 6/8 in two, 12/8 in four. */
export const isCompound = (metre: Metre): boolean =>
  metre.unit === 8 && metre.count > 3 && metre.count % 3 === 0;

/** Length of the beat that is counted and that a tempo refers to: a dotted quarter in compound time. */
export const beatTicks = (metre: Metre): Ticks =>
  ticks(isCompound(metre) ? unitTicks(metre) * 3 : unitTicks(metre));

/** Counted beats in a bar: 4 in 4/4, 3 in 3/4, 2 in 6/8. */
export const beatsInBar = (metre: Metre): number => (isCompound(metre) ? metre.count / 3 : metre.count);

export const barTicks = (metre: Metre): Ticks => ticks(unitTicks(metre) * metre.count);

export const sameMetre = (one: Metre, other: Metre): boolean =>
  one.count === other.count && one.unit === other.unit;
