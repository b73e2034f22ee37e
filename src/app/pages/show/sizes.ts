import type { TextSizes } from '../../../score';
import { DIGIT_HEIGHT, heightSeen, LEAST_MINUTES } from './reading';

/** Sizes of a drawing in CSS pixels. */
export interface Size {
  readonly staffSpace: number;
  /** Font size of frets, degrees and counting. */
  readonly digits: number;
}

/** What a trial of a size gives. */
export interface Trial {
  /** Height of the highest system, in CSS pixels. */
  readonly height: number;
  /** How many systems there are: more of them where the width does not hold the bars that are wanted. */
  readonly systems: number;
  /** Share of its size at which it is drawn: below 1 where a bar would not fit else. */
  readonly share: number;
}

/**
 * The texts of a drawing: what is read at a glance is alike, chords a little larger. Names of sections, the feel and the
 * numbers of bars are read before one plays, and take no room from it.
 */
export const textSizesFor = ({ staffSpace, digits }: Size): Partial<TextSizes> => ({
  tab: digits,
  degree: digits,
  counting: digits,
  chord: Math.max(staffSpace * 2.1, digits * 1.15),
  section: Math.max(12, digits * 0.45),
  small: Math.max(11, digits * 0.4),
});

/** Minutes of arc that digits are to cover for whoever stands three metres away (see `reading.ts`). */
const ASKED_MINUTES = 20;
/** Of the size that is asked for, what is just read from as far away: as digits, and as a space of the staff. */
const DIGIT_SHARE = LEAST_MINUTES.text / ASKED_MINUTES;
const STAFF_SHARE = (LEAST_MINUTES.staff / ASKED_MINUTES) * DIGIT_HEIGHT;
/** The sizes of {@link wayTo} rise from one to the next only within these. */
const ASKED_SIZES = { least: 44, most: 300 } as const;

/**
 * Font size of digits that are read from three metres, in CSS pixels.
 * @param millimetres - of a CSS pixel on the screen
 */
export const readableSize = (millimetres: number): number =>
  Math.min(
    ASKED_SIZES.most,
    Math.max(ASKED_SIZES.least, heightSeen(ASKED_MINUTES) / millimetres / DIGIT_HEIGHT),
  );

/**
 * Sizes from the smallest to the largest. With a staff, staff and digits grow so that both are read equally far away, up
 * to three metres, and then first the digits. Without one the room goes to the digits. What is left goes to both.
 */
const wayTo = ({ asked, staff }: Pick<Trying, 'asked' | 'staff'>): readonly Size[] => {
  const least = { staffSpace: asked * STAFF_SHARE, digits: asked * DIGIT_SHARE };
  return [
    { staffSpace: 6, digits: 9 },
    ...(staff
      ? [{ staffSpace: 7, digits: 7 / (STAFF_SHARE / DIGIT_SHARE) }, least]
      : [{ staffSpace: 8, digits: 36 }]),
    { staffSpace: staff ? least.staffSpace : asked / 4.5, digits: asked },
    { staffSpace: asked / 2, digits: asked },
    { staffSpace: asked * 2, digits: asked * 4 },
  ];
};

/** A place on the way, from 0 to the number of its last size. */
function sizeAt(way: readonly Size[], place: number): Size {
  const index = Math.min(way.length - 2, Math.floor(place));
  const [from, to] = [way[index], way[index + 1]];
  if (from === undefined || to === undefined) throw new RangeError(`No size at ${place}.`);
  const share = place - index;
  return {
    staffSpace: from.staffSpace + (to.staffSpace - from.staffSpace) * share,
    digits: from.digits + (to.digits - from.digits) * share,
  };
}

/** What the sizes are tried with. */
export interface Trying {
  /** Lays out at a size. */
  readonly tryAt: (size: Size) => Trial;
  readonly rows: number;
  /** Whether there is a staff to be read. */
  readonly staff: boolean;
  /** Height in CSS pixels for all rows. */
  readonly room: number;
  /** Font size of digits that are read across the room, in CSS pixels. */
  readonly asked: number;
}

/** Shares that differ by less are equal: they come from products and quotients of broken numbers. */
const SHARE_IS_EQUAL = 1e-6;

/** Whether a size has room, by its place on the way. */
function roomTest({ tryAt, rows, room, ...wanted }: Trying): (place: number) => boolean {
  const way = wayTo(wanted);
  const fewest = tryAt(sizeAt(way, 0));
  return (place) => {
    const { height, systems, share } = tryAt(sizeAt(way, place));
    return height * rows <= room && systems <= fewest.systems && share >= fewest.share - SHARE_IS_EQUAL;
  };
}

/** The farthest place that passes, between the first, which always does, and the last. */
function farthest(last: number, passes: (place: number) => boolean): number {
  if (passes(last)) return last;
  let [low, high] = [0, last];
  while (high - low > 0.02) {
    const middle = (low + high) / 2;
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * The largest size at which so many systems fit one under the other and the width holds as many bars as it does at the
 * smallest.
 */
export function largestSize(trying: Trying): Size {
  const way = wayTo(trying);
  return sizeAt(way, farthest(way.length - 1, roomTest(trying)));
}

/** The smallest size on the way that is nowhere below another, where there is room for it; null where there is none. */
export function sizeWithRoom(trying: Trying, least: Size): Size | null {
  const way = wayTo(trying);
  const isLess = (place: number): boolean => {
    const { staffSpace, digits } = sizeAt(way, place);
    return staffSpace < least.staffSpace || digits < least.digits;
  };
  const last = way.length - 1;
  if (isLess(last)) return null;
  const place = Math.min(last, farthest(last, isLess) + 0.02);
  return roomTest(trying)(place) ? sizeAt(way, place) : null;
}
