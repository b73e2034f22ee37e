import type { TextSizes } from '../../score';
import type { TextStyle } from './marks';
import { points } from './paper';

/** How close things may stand. Lengths are points. */
export interface Spacing {
  /** Height of the five-line staff. */
  readonly staff: number;
  readonly systemGap: number;
  readonly blockGap: number;
  /** Rows of shapes to learn that a piece shows at most. */
  readonly shapeRows: number;
  /** Bars are not fewer in a system to stay in proportion. */
  readonly givesWay?: boolean;
}

/** As many as there are: what is shown is limited by what can be learned by heart (see the block of shapes). */
const ALL_ROWS = 3;

/** Everything on the page that has a size, in points. */
export interface Sizes {
  readonly title: TextStyle;
  readonly pieceName: TextStyle;
  readonly heading: TextStyle;
  readonly body: TextStyle;
  readonly bodyBold: TextStyle;
  readonly small: TextStyle;
  readonly smallBold: TextStyle;
  readonly score: TextSizes;
  readonly barsPerSystem: number;
  /**
   * From the comfortable to the closest that is still good to read; the first that serves is taken. The last leaves out
   * shapes, too.
   */
  readonly spacings: readonly [Spacing, ...Spacing[]];
}

/**
 * Normal print: title 18–20, chords 12–14, tab and text 10 or more, fingering 8–9 (common practice, no source);
 * a staff of 7 mm, 6.5 at least, and four bars a system (elasticdog.com notation style guide).
 */
const NORMAL: Sizes = {
  title: { size: 19, bold: true },
  pieceName: { size: 14, bold: true },
  heading: { size: 12, bold: true },
  body: { size: 11, bold: false },
  bodyBold: { size: 11, bold: true },
  small: { size: 10, bold: false },
  smallBold: { size: 10, bold: true },
  score: { chord: 13, tab: 10, degree: 10, finger: 9, counting: 10, section: 11, small: 10 },
  barsPerSystem: 4,
  spacings: [
    { staff: points(7), systemGap: 14, blockGap: 16, shapeRows: ALL_ROWS },
    { staff: points(7), systemGap: 6, blockGap: 11, shapeRows: ALL_ROWS },
    { staff: points(6.5), systemGap: 4, blockGap: 8, shapeRows: ALL_ROWS },
    { staff: points(6.5), systemGap: 4, blockGap: 8, shapeRows: ALL_ROWS, givesWay: true },
    { staff: points(6.5), systemGap: 4, blockGap: 8, shapeRows: 1, givesWay: true },
  ],
};

/** Large print begins at 16 points (UK Association for Accessible Formats, clear and large print). */
const LARGE_BODY = 16;
const LARGER = LARGE_BODY / NORMAL.body.size;

const enlarged = ({ size, bold }: TextStyle): TextStyle => ({ size: size * LARGER, bold });

const LARGE: Sizes = {
  title: enlarged(NORMAL.title),
  pieceName: enlarged(NORMAL.pieceName),
  heading: enlarged(NORMAL.heading),
  body: enlarged(NORMAL.body),
  bodyBold: enlarged(NORMAL.bodyBold),
  small: { size: LARGE_BODY, bold: false },
  smallBold: { size: LARGE_BODY, bold: true },
  score: {
    chord: NORMAL.score.chord * LARGER,
    tab: LARGE_BODY,
    degree: LARGE_BODY,
    finger: LARGE_BODY,
    counting: LARGE_BODY,
    section: LARGE_BODY,
    small: LARGE_BODY,
  },
  barsPerSystem: 4,
  spacings: [
    { staff: points(7) * LARGER, systemGap: 14, blockGap: 18, shapeRows: ALL_ROWS },
    { staff: points(7) * LARGER, systemGap: 6, blockGap: 12, shapeRows: ALL_ROWS },
    { staff: points(6.5) * LARGER, systemGap: 4, blockGap: 9, shapeRows: ALL_ROWS },
    { staff: points(6.5) * LARGER, systemGap: 4, blockGap: 9, shapeRows: ALL_ROWS, givesWay: true },
    { staff: points(6.5) * LARGER, systemGap: 4, blockGap: 9, shapeRows: 1, givesWay: true },
  ],
};

export const sizesFor = (print: 'normal' | 'large'): Sizes => (print === 'large' ? LARGE : NORMAL);
