import { MUSIC_SIZE } from '../ink';
import type { ScoreOptions, TextSizes } from '../types';

/** All lengths of the layout are units of a tenth of a staff space. */
export const SPACE = 10;
export const STAFF_HEIGHT = 4 * SPACE;

/** The vertical place of a head, from the staff's top line. */
export const headY = (height: number): number => STAFF_HEIGHT / 2 - (height * SPACE) / 2;

/** Half a head's width: where ties begin and end beside it. */
export const HALF_HEAD = MUSIC_SIZE * 0.1475;

/** Line widths, by Bravura's engraving defaults (SMuFL metadata). */
export const THICKNESS = {
  staff: 1.3,
  barLine: 1.6,
  thick: 5,
  bracket: 4.5,
  box: 1.4,
  tuplet: 1.6,
  hairpin: 1.6,
} as const;

/** Where the staff begins, right of the bracket that joins it with the tab. */
export const STAFF_LEFT = 9;

/** Sizes that fit a staff space of 10. */
const DEFAULT_SIZES: TextSizes = {
  chord: 21,
  tab: 15,
  degree: 15,
  finger: 13,
  counting: 14,
  section: 16,
  small: 12,
};

export interface Style {
  /** CSS pixels a unit. */
  readonly scale: number;
  readonly sizes: TextSizes;
  /** Between two tab lines. */
  readonly tabSpace: number;
  readonly options: ScoreOptions;
  /** The same text for the same style. */
  readonly key: string;
  /** The same text for a style in which bars measure the same, however wide a system is. */
  readonly barKey: string;
}

/** @param shrink below 1 draws everything smaller, where a bar would not fit otherwise */
export function styleOf(options: ScoreOptions, shrink: number): Style {
  const scale = ((options.staffSpace ?? SPACE) / SPACE) * shrink;
  const size = (name: keyof TextSizes): number => {
    const asked = options.textSizes?.[name];
    return asked === undefined ? DEFAULT_SIZES[name] : asked / (scale / shrink);
  };
  const sizes: TextSizes = {
    chord: size('chord'),
    tab: size('tab'),
    degree: size('degree'),
    finger: size('finger'),
    counting: size('counting'),
    section: size('section'),
    small: size('small'),
  };
  const { width, degrees, fingers, counting, measureNumbers, parts = 'both' } = options;
  const { numerals = false, positions = false } = options;
  const rows = [degrees, fingers, counting, numerals, positions, measureNumbers, parts];
  const { barsPerSystem, strictly = false, tightest = null, joinsSections = false } = options;
  const fullness = [barsPerSystem, strictly, tightest, joinsSections, options.givesWay === true];
  const barKey = JSON.stringify([scale, sizes, rows]);
  const key = JSON.stringify([barKey, width, ...fullness]);
  return { scale, sizes, tabSpace: Math.max(14, sizes.tab * 0.8), options, key, barKey };
}
