import { type Ticks, ticks } from '../base';

/** Plain values from the sixteenth to the whole note. */
const PLAIN = [240, 480, 960, 1920, 3840] as const;

/** Two thirds of a plain value; triplets of eighths, quarters and halves are what is taught. */
const triplet = (plain: number): number => (plain * 2) / 3;

/** The values that a note can be made in one step, as the toolbar shows them. */
export const NOTE_VALUES: readonly Ticks[] = PLAIN.map(ticks);

/**
 * The next longer value: plain ones, among triplets triplets, and from a dotted beat on whole beats (dotted quarter,
 * dotted half). Null above the longest.
 * @param beat ticks of a beat of the bar
 */
export function longerValue(value: number, beat: number): Ticks | null {
  const next = rowOf(value, beat).find((each) => each > value);
  return next === undefined ? null : ticks(next);
}

/** The next shorter value, likewise; null below the sixteenth. */
export function shorterValue(value: number, beat: number): Ticks | null {
  const next = rowOf(value, beat).findLast((each) => each < value);
  return next === undefined ? null : ticks(next);
}

const TRIPLETS = PLAIN.slice(1, 4).map(triplet);
const isTriplet = (value: number): boolean => TRIPLETS.includes(value);

function rowOf(value: number, beat: number): readonly number[] {
  if (isTriplet(value)) return TRIPLETS;
  return isDotted(beat) ? [...PLAIN.filter((plain) => plain < beat), beat, 2 * beat, 4 * beat] : PLAIN;
}

const isPlain = (value: number): boolean => PLAIN.some((plain) => plain === value);

/** With a dot, or without the dot it has; null where a dot would ask for less than a sixteenth. */
export function dottedValue(value: number): Ticks | null {
  if (isPlain(value) && value > 240) return ticks(value * 1.5);
  return isDotted(value) ? ticks(value / 1.5) : null;
}

export const isDotted = (value: number): boolean => isPlain(value / 1.5) && value / 1.5 > 240;

/** What fills up to the next plain value after a dotted note: an eighth after a dotted quarter. */
export const fillAfterDot = (dotted: number): Ticks => ticks(dotted / 3);

/** As one of a triplet, or back from it; null for what has no triplet. */
export function tripletValue(value: number): Ticks | null {
  if (isTriplet(value)) return ticks(value * 1.5);
  return isPlain(value) && value > 240 && value < 3840 ? ticks(triplet(value)) : null;
}
