import type { TextMeasure } from '../layout/marks';
import type { Spacing } from '../layout/sizes';

/** What every block of the page is set with. */
export interface BlockContext {
  /** Width of the printed part of the page in points. */
  readonly width: number;
  readonly spacing: Spacing;
  readonly measure: TextMeasure;
}
