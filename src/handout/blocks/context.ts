import type { Engravable, ScoreLayout, ScoreOptions, Steps } from '../../score';
import type { TextMeasure } from '../layout/marks';
import type { Sizes, Spacing } from '../layout/sizes';
import type { FullSettings } from '../model/settings';

/** A piece engraved for the page. */
export interface EngravedScore {
  readonly layout: ScoreLayout;
  /** Index among all scores of the handout, for the marks that show its systems. */
  readonly index: number;
}

/** What every block of the page is set with. */
export interface BlockContext {
  /** Width of the printed part of the page in points. */
  readonly width: number;
  readonly settings: FullSettings;
  readonly sizes: Sizes;
  readonly spacing: Spacing;
  readonly measure: TextMeasure;
  /** Whether the sheet asks questions, so that nothing on it states an answer. */
  readonly asks: boolean;
  /** Engraves in the page's sizes, the full width and the teacher's choices, unless told otherwise. */
  readonly engrave: (sheet: Engravable, options?: Partial<ScoreOptions>) => Steps<EngravedScore>;
}
