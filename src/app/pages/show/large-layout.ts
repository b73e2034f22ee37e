import type { LineSheet } from '../../../core/lesson';
import type { ScoreLayout, ScoreOptions } from '../../../score';
import type { Shown } from './choices';
import { isReadAcross, leastAcross, type ReadFrom, readFrom, spaceOf } from './reading';
import type { Room } from './room';
import { largestSize, readableSize, type Size, sizeWithRoom, type Trying, textSizesFor } from './sizes';

/** Bars close up to this share of their natural spacing: they are to be large before they are airy. */
export const TIGHTEST = 0.5;

/** A width at which bars stand beside each other as many as may. */
const WIDE_ENOUGH = 20;

type LayOut<Layout> = (sheet: LineSheet, options: ScoreOptions) => Layout;

interface Wanted {
  readonly shown: Shown;
  /** Written bars that are seen at once. */
  readonly bars: 2 | 4;
  readonly room: Room;
  /** Of a CSS pixel on the screen. */
  readonly millimetres: number;
}

/** How the bars stand: so many beside each other in so many rows. */
interface Arrangement {
  readonly rows: 1 | 2;
  readonly inRow: 1 | 2 | 4;
}

const TWO_ROWS: Arrangement = { rows: 2, inRow: 2 };
export const ARRANGEMENTS: Readonly<Record<2 | 4, readonly [Arrangement, ...Arrangement[]]>> = {
  // Where the room is higher than wide, one below the other is larger, and what is played never moves there either.
  2: [
    { rows: 1, inRow: 2 },
    { rows: 2, inRow: 1 },
  ],
  // In two rows what is played never moves, so they come first; in one row there is more height for each thing.
  4: [TWO_ROWS, { rows: 1, inRow: 4 }],
};

/** A line as it is drawn, and how many of its systems are seen one under the other. */
export interface LargeLayout<Layout> {
  readonly layout: Layout;
  readonly rows: 1 | 2;
}

interface Drawn {
  readonly layout: Pick<ScoreLayout, 'systems'>;
  readonly rows: 1 | 2;
  readonly read: ReadFrom;
}

/** Millimetres by which two distances are still the same. */
const SAME = 1e-6;

/** Lays out at a size, and tries sizes. */
function workshop<Layout extends Pick<ScoreLayout, 'systems'>>(
  layOut: LayOut<Layout>,
  sheet: LineSheet,
  { shown, room, millimetres }: Wanted,
  { rows, inRow }: Arrangement,
) {
  const at = (size: Size, width = room.width): Layout =>
    layOut(sheet, {
      ...shown,
      width,
      staffSpace: size.staffSpace,
      textSizes: textSizesFor(size),
      fingers: false,
      barsPerSystem: inRow,
      strictly: true,
      tightest: TIGHTEST,
      givesWay: true,
      measureNumbers: true,
    });
  const tryAt = (size: Size) => {
    const { systems } = at(size);
    return {
      systems: systems.length,
      height: Math.max(...systems.map((system) => system.height)),
      share: Math.min(...systems.map((system) => spaceOf(system) / size.staffSpace)),
    };
  };
  const staff = shown.parts !== 'tab';
  const trying: Trying = { tryAt, rows, staff, room: room.height, asked: readableSize(millimetres) };
  const isFull = (layout: Layout): boolean => {
    const smallest = { staffSpace: 6, digits: 9 };
    return layout.systems.length <= at(smallest, room.width * WIDE_ENOUGH).systems.length;
  };
  const readOf = ({ systems }: Layout): ReadFrom => readFrom(systems, { staff, neck: null, millimetres });
  return { at, trying, isFull, readOf, staff };
}

/** A line in one arrangement, as large as the room allows: from how far it is read, and whether as many bars stand there. */
export function drawnIn<Layout extends Pick<ScoreLayout, 'systems'>>(
  layOut: LayOut<Layout>,
  sheet: LineSheet,
  wanted: Wanted,
  arrangement: Arrangement,
) {
  const { at, trying, isFull, readOf } = workshop(layOut, sheet, wanted, arrangement);
  const layout = at(largestSize(trying));
  return { layout, rows: arrangement.rows, isFull, read: readOf(layout) };
}

/**
 * Lays a line out as large as the room allows: two bars in a row, four in two rows; or two below and four beside each
 * other, where that is read from farther away and the usual way is not read from three metres.
 */
export function layOutLarge<Layout extends Pick<ScoreLayout, 'systems'>>(
  layOut: LayOut<Layout>,
  sheet: LineSheet,
  wanted: Wanted,
): LargeLayout<Layout> {
  const [usual, ...others] = ARRANGEMENTS[wanted.bars];
  let best = drawnIn(layOut, sheet, wanted, usual);
  for (const arrangement of others) {
    if (isReadAcross(best.read)) break;
    const made = drawnIn(layOut, sheet, wanted, arrangement);
    if (isLarger(made, best) && made.isFull(made.layout)) best = made;
  }
  return { layout: best.layout, rows: best.rows };
}

/** Read from farther away; or from as far, where more of the room's height is filled: then its texts are larger. */
function isLarger(made: Drawn, best: Drawn): boolean {
  const [far, near] = [made.read.music ?? 0, best.read.music ?? 0];
  const filled = ({ layout, rows }: Drawn): number =>
    rows * Math.max(...layout.systems.map(({ height }) => height));
  return Math.abs(far - near) < SAME ? filled(made) > filled(best) : far > near;
}

/** Whether there is room for the line at a size that is read from three metres: found in a few layouts. */
export function canBeReadAcross(
  layOut: LayOut<Pick<ScoreLayout, 'systems'>>,
  sheet: LineSheet,
  wanted: Wanted,
): boolean {
  return ARRANGEMENTS[wanted.bars].some((arrangement) => {
    const { at, trying, isFull, readOf, staff } = workshop(layOut, sheet, wanted, arrangement);
    const { digits, staffSpace } = leastAcross(wanted.millimetres);
    const size = sizeWithRoom(trying, { digits, staffSpace: staff ? staffSpace : 0 });
    if (size === null) return false;
    const layout = at(size);
    return isReadAcross(readOf(layout)) && isFull(layout);
  });
}
