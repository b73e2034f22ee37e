import type { TextSizes } from '../../../score';

/**
 * How large what is read across a room has to be. ISO 9241-303 (visual displays, from memory) asks for characters of 16
 * minutes of arc at least and recommends 20 to 22; a capital or digit is as high as the font's capitals.
 *
 * The screen: 24 inches across its corners, 1920 × 1080 CSS pixels, so 0.277 mm a pixel, read from 3 m. A picture of a
 * projector is read alike from 5.6 times its width. CSS tells no page how large its screen is, so the same height in
 * pixels is asked for everywhere, and what a smaller screen holds is as near to it as there is room.
 */
const READ_FROM_MM = 3000;
const PIXEL_MM = (24 * 25.4) / Math.hypot(1920, 1080);

/** Minutes of arc that a height in CSS pixels covers at {@link READ_FROM_MM} on the screen that is meant. */
export const minutesOfArc = (pixels: number): number =>
  (Math.atan((pixels * PIXEL_MM) / READ_FROM_MM) * 180 * 60) / Math.PI;

/** Academico's digits are as high as its capitals: so much of the font's size (by its font file). */
export const DIGIT_HEIGHT = 0.722;

const ASKED_MINUTES = 20;
/** Font size of digits that are read from there. */
export const READABLE_SIZE =
  (Math.tan((ASKED_MINUTES / 60 / 180) * Math.PI) * READ_FROM_MM) / PIXEL_MM / DIGIT_HEIGHT;

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

/** The texts of a drawing: what is read at a glance is alike, chords a little larger. */
export const textSizesFor = ({ staffSpace, digits }: Size): Partial<TextSizes> => ({
  tab: digits,
  degree: digits,
  counting: digits,
  chord: Math.max(staffSpace * 2.1, digits * 1.15),
});

/**
 * Sizes from the smallest to the largest. Where there is little room it goes to the digits, up to four and a half spaces
 * high; where they are read across the room, all that is left is the staff's.
 */
const WAY: readonly Size[] = [
  { staffSpace: 8, digits: 12 },
  { staffSpace: 8, digits: 36 },
  { staffSpace: READABLE_SIZE / 4.5, digits: READABLE_SIZE },
  { staffSpace: 44, digits: READABLE_SIZE },
];

/** A place on the way, from 0 to the number of its last size. */
function sizeAt(place: number): Size {
  const index = Math.min(WAY.length - 2, Math.floor(place));
  const [from, to] = [WAY[index], WAY[index + 1]];
  if (from === undefined || to === undefined) throw new RangeError(`No size at ${place}.`);
  const share = place - index;
  return {
    staffSpace: from.staffSpace + (to.staffSpace - from.staffSpace) * share,
    digits: from.digits + (to.digits - from.digits) * share,
  };
}

/**
 * The largest size at which so many systems fit one under the other and the width holds as many bars as it does at the
 * smallest.
 * @param tryAt - lays out at a size
 * @param room - height in CSS pixels for all rows
 */
export function largestSize(tryAt: (size: Size) => Trial, rows: number, room: number): Size {
  const fewest = tryAt(sizeAt(0));
  const fits = (place: number): boolean => {
    const { height, systems, share } = tryAt(sizeAt(place));
    return height * rows <= room && systems <= fewest.systems && share >= fewest.share;
  };
  let [low, high] = [0, WAY.length - 1];
  if (fits(high)) return sizeAt(high);
  while (high - low > 0.02) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return sizeAt(low);
}
