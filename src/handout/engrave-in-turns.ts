import {
  type Engravable,
  inTurns,
  isLong,
  layoutInSteps,
  layoutScore,
  type ScoreLayout,
  type ScoreOptions,
} from '../score';
import type { Tools } from './layout/compose';
import { engravedAs } from './layout/pages';

/** Staves that were asked for and are still to be engraved. */
class NotEngraved extends Error {
  constructor(
    readonly sheet: Engravable,
    readonly options: ScoreOptions,
  ) {
    super('These staves are still to be engraved.');
  }
}

/** How staves are engraved, once the score's fonts are there. */
const ENGRAVER = { atOnce: layoutScore, inSteps: layoutInSteps };

/**
 * Lays out with staves of which the long ones are engraved in turns with the page. Which staves it takes shows while
 * it is laid out: where a long one is missing, that one is engraved and the layout begun again, which costs little.
 */
export async function engraveInTurns<Layout>(
  layOut: (engrave: Tools['engrave']) => Layout,
  { atOnce, inSteps } = ENGRAVER,
): Promise<Layout> {
  const engraved = new Map<string, ScoreLayout>();
  const engrave = (sheet: Engravable, options: ScoreOptions): ScoreLayout => {
    if (!isLong(sheet)) return atOnce(sheet, options);
    const known = engraved.get(engravedAs(sheet, options));
    if (known === undefined) throw new NotEngraved(sheet, options);
    return known;
  };
  for (;;) {
    try {
      return layOut(engrave);
    } catch (missing) {
      if (!(missing instanceof NotEngraved)) throw missing;
      const { sheet, options } = missing;
      const layout = await inTurns(inSteps(sheet, options));
      if (layout !== null) engraved.set(engravedAs(sheet, options), layout);
    }
  }
}
