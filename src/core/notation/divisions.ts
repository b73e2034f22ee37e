import {
  barTicks,
  beatGroups,
  beatsOf,
  beatTicks,
  isCompound,
  isDotted,
  isUneven,
  type Metre,
  TICKS_PER_QUARTER,
  unitTicks,
} from '../base';

/**
 * A stretch of a bar as its metre divides it: the whole bar, its halves, its beats, and so on down. Rhythms are
 * written so that these divisions can be seen.
 */
export interface Division {
  readonly start: number;
  readonly length: number;
  readonly parts: readonly Division[];
  /** A silent stretch of this length is one rest. */
  readonly rest: boolean;
  /** A note that ends with the division may begin off the division's parts, as a dotted value. */
  readonly lateStart: boolean;
}

/** Below a 64th nothing is divided any more. */
const SMALLEST = TICKS_PER_QUARTER / 16;

interface Traits {
  readonly rest: boolean;
  readonly lateStart: boolean;
}

const PLAIN: Traits = { rest: true, lateStart: true };

function inTwo(start: number, length: number, traits: Traits = PLAIN): Division {
  const half = length / 2;
  const parts = half >= SMALLEST ? [inTwo(start, half), inTwo(start + half, half)] : [];
  return { start, length, parts, ...traits };
}

/** A dotted beat: three units, each divided in two. */
function inThree(start: number, length: number): Division {
  const third = length / 3;
  return { start, length, parts: [0, 1, 2].map((part) => inTwo(start + part * third, third)), ...PLAIN };
}

function joined(start: number, parts: readonly Division[], traits: Traits): Division {
  return { start, length: parts.reduce((sum, part) => sum + part.length, 0), parts, ...traits };
}

/** The divisions of a bar of a metre; the root is the whole bar. */
export function divisionsOf(metre: Metre): Division {
  const beat = beatTicks(metre);
  const whole: Traits = { rest: true, lateStart: false };
  if (isCompound(metre)) {
    const beats = Array.from({ length: metre.count / 3 }, (_, index) => inThree(index * beat, beat));
    if (beats.length % 2 === 0 && beats.length > 2) {
      const half = beats.length / 2;
      const group: Traits = { rest: false, lateStart: false };
      return joined(
        0,
        [joined(0, beats.slice(0, half), group), joined(half * beat, beats.slice(half), group)],
        whole,
      );
    }
    return joined(0, beats, whole);
  }
  if (isUneven(metre)) {
    const parts = beatsOf(metre).map((each) =>
      isDotted(each) ? inThree(each.start, each.length) : inTwo(each.start, each.length),
    );
    return joined(0, parts, whole);
  }
  if (metre.count === 4 || metre.count === 2) {
    const strict = metre.count === 4 || metre.unit === 4;
    return inTwo(0, barTicks(metre), { rest: true, lateStart: !strict || metre.unit === 2 });
  }
  const groups = beatGroups(metre);
  let first = 0;
  const beats = groups.map((count) => {
    const start = first * unitTicks(metre);
    first += count;
    const parts = Array.from({ length: count }, (_, index) => inTwo(start + index * beat, beat));
    return groups.length === 1 ? parts : [joined(start, parts, { rest: false, lateStart: false })];
  });
  return joined(0, beats.flat(), whole);
}

/** The written length of one triplet region, as a dotted beat that the same rules divide. */
export const tripletDivision = (length: number): Division => inThree(0, length);
