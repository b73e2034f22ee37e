import type { LineSheet } from '../../../core/lesson';
import type { ScoreLayout, ScoreOptions } from '../../../score';
import type { Shown } from './choices';
import { isReadAcross, leastAcross, readFrom } from './reading';
import type { Room } from './room';
import { largestSize, readableSize, type Size, sizeWithRoom, type Trying, textSizesFor } from './sizes';

/** Written bars that stand beside each other. */
export const BARS_IN_ROW = 2;
/** A staff space in the drawing's own units. */
const UNITS = 10;

type LayOut<Layout> = (sheet: LineSheet, options: ScoreOptions) => Layout;

interface Wanted {
  readonly shown: Shown;
  readonly rows: 1 | 2;
  readonly room: Room;
  /** Of a CSS pixel on the screen. */
  readonly millimetres: number;
}

/** Lays out at a size, and tries sizes. */
function workshop<Layout extends Pick<ScoreLayout, 'systems'>>(
  layOut: LayOut<Layout>,
  sheet: LineSheet,
  { shown, rows, room, millimetres }: Wanted,
): { readonly at: (size: Size) => Layout; readonly trying: Trying } {
  const at = (size: Size): Layout =>
    layOut(sheet, {
      ...shown,
      width: room.width,
      staffSpace: size.staffSpace,
      textSizes: textSizesFor(size),
      fingers: false,
      barsPerSystem: BARS_IN_ROW,
      strictly: true,
      measureNumbers: true,
    });
  const tryAt = (size: Size) => {
    const { systems } = at(size);
    return {
      systems: systems.length,
      height: Math.max(...systems.map((system) => system.height)),
      share: Math.min(...systems.map(({ scale }) => (scale * UNITS) / size.staffSpace)),
    };
  };
  return { at, trying: { tryAt, rows, room: room.height, asked: readableSize(millimetres) } };
}

/** Lays a line out as large as the room allows, so many systems of two bars one under the other. */
export function layOutLarge<Layout extends Pick<ScoreLayout, 'systems'>>(
  layOut: LayOut<Layout>,
  sheet: LineSheet,
  wanted: Wanted,
): Layout {
  const { at, trying } = workshop(layOut, sheet, wanted);
  return at(largestSize(trying));
}

/** Whether there is room for the line at a size that is read from three metres: found in two layouts. */
export function canBeReadAcross(
  layOut: LayOut<Pick<ScoreLayout, 'systems'>>,
  sheet: LineSheet,
  wanted: Wanted,
): boolean {
  const { at, trying } = workshop(layOut, sheet, wanted);
  const staff = wanted.shown.parts !== 'tab';
  const { digits, staffSpace } = leastAcross(wanted.millimetres);
  const size = sizeWithRoom(trying, { digits, staffSpace: staff ? staffSpace : 0 });
  if (size === null) return false;
  const { systems } = at(size);
  return isReadAcross(readFrom(systems, { staff, neck: null, millimetres: wanted.millimetres }));
}
