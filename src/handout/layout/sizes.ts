import type { TextSizes } from '../../score';
import type { TextStyle } from './marks';
import { points } from './paper';

/** Font sizes of the page in points: title 18–20, text 10 or more (common practice, no source). */
export const TITLE: TextStyle = { size: 19, bold: true };
export const PIECE_NAME: TextStyle = { size: 14, bold: true };
export const HEADING: TextStyle = { size: 12, bold: true };
export const BODY: TextStyle = { size: 11, bold: false };
export const SMALL: TextStyle = { size: 10, bold: false };
export const SMALL_BOLD: TextStyle = { size: 10, bold: true };

/**
 * Font sizes inside the score, in points: chords 12–14, tab and words 10 or more, fingering 8–9 (common
 * practice, no source).
 */
export const SCORE_TEXT: TextSizes = {
  chord: 13,
  tab: 10,
  degree: 10,
  finger: 9,
  counting: 10,
  section: 11,
  small: 10,
};

/** How close things may stand. Lengths are points. */
export interface Spacing {
  /** Height of the five-line staff: 7 mm, 6.5 at least (elasticdog.com notation style guide). */
  readonly staff: number;
  readonly systemGap: number;
  readonly blockGap: number;
}

/** From the comfortable to the closest that is still good to read; the first that serves is taken. */
export const SPACINGS: readonly [Spacing, ...Spacing[]] = [
  { staff: points(7), systemGap: 14, blockGap: 16 },
  { staff: points(7), systemGap: 7, blockGap: 11 },
  { staff: points(6.5), systemGap: 5, blockGap: 9 },
];
