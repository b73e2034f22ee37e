import { SIGNS } from '../../core/base';
import { lineMark, type Mark } from '../ink';
import type { ContentExit } from '../notation/types';
import { curveMark } from './curve';
import { eventsOf, headEdges, type Joint, jointsOf, type PlacedEvent } from './joints';
import type { PlacedBar } from './placed';
import { type Skyline, skylineOf } from './skyline';
import { headY } from './style';

const SLIDE_WIDTH = 1.6;
/** White between a head or fret and a line beside it. */
const BESIDE = 2.5;
/** A short line beside a note. */
const STUB = { length: 11, height: 6 } as const;
/** How far a line between two notes of one height, or one string, slants. */
const SLANT = 3;
/** White between a curve's end and the ink under it, and the reach beside the head in which it looks for it. */
const CURVE_GAP = 3;
const HEAD_REACH = 6.5;

const stemOf = ({ placed, index }: PlacedEvent): 'up' | 'down' => placed.bar.specs[index]?.stem ?? 'up';

/** A slur lies at the heads where all stems go up, else over the notes; outside all other signs. */
function slurMark({ from, to, edge }: Joint, ink: Skyline): Mark {
  const ends = [from, to].flatMap((end) => end ?? []);
  const away = ends.every((end) => stemOf(end) === 'up') ? 1 : -1;
  const reach = ({ x, event }: PlacedEvent): number => {
    const head = headY(event.height);
    return away > 0
      ? ink.bottom(x - HEAD_REACH, x + HEAD_REACH, head) + CURVE_GAP
      : ink.top(x - HEAD_REACH, x + HEAD_REACH, head) - CURVE_GAP;
  };
  const known = ends.map(reach);
  const start = { x: from ? from.x + 1 : edge, y: (from ? reach(from) : known[0]) ?? 0 };
  const end = { x: to ? to.x - 1 : edge, y: (to ? reach(to) : known[0]) ?? 0 };
  const middle = (start.y + end.y) / 2;
  const between =
    away > 0
      ? ink.bottom(start.x + HEAD_REACH, end.x - HEAD_REACH, middle) - middle
      : middle - ink.top(start.x + HEAD_REACH, end.x - HEAD_REACH, middle);
  const bow = Math.max(Math.min(9, 3.5 + (end.x - start.x) * 0.06), between + CURVE_GAP);
  return curveMark('slur', start, end, away, bow);
}

const line = (x1: number, y1: number, x2: number, y2: number): Mark =>
  lineMark('slide', x1, y1, x2, y2, SLIDE_WIDTH);

/** A place that a slide comes from or goes to. */
interface SlideEnd {
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

function slideMark({ rises }: ContentExit, from: SlideEnd | null, to: SlideEnd | null, edge: number): Mark {
  const y = from?.y ?? to?.y ?? 0;
  const start = { x: from ? from.right + BESIDE : edge, y: from?.y ?? y };
  const end = { x: to ? to.left - BESIDE : edge, y: to?.y ?? y };
  // A slide that has lost its note falls away.
  const slant = start.y === end.y ? (rises || -1) * SLANT : 0;
  return line(start.x, start.y + slant, end.x, end.y - slant);
}

/** Short lines into and out of a note. */
function stubMarks(placed: PlacedEvent, endOf: (placed: PlacedEvent) => SlideEnd | null): readonly Mark[] {
  const { signs, exit } = placed.event;
  // Few notes have any, and where a note ends is asked of those alone.
  if (signs.length === 0 && exit === null) return [];
  return [...signs, ...(exit ? [exit.sign] : [])].flatMap((sign) => {
    const { drawn } = SIGNS[sign];
    const end = drawn.as === 'stub' ? endOf(placed) : null;
    if (drawn.as !== 'stub' || end === null) return [];
    const { length, height } = STUB;
    const drop = drawn.rises ? height : -height;
    const inner = drawn.side === 'before' ? end.left - BESIDE : end.right + BESIDE;
    return drawn.side === 'before'
      ? [line(inner - length, end.y + drop, inner, end.y)]
      : [line(inner, end.y, inner + length, end.y - drop)];
  });
}

/**
 * Slurs and slides of the staff.
 * @param staff the ink they keep clear of
 */
export function staffLinks(bars: readonly PlacedBar[], staff: readonly Mark[]): readonly Mark[] {
  const endOf = (placed: PlacedEvent): SlideEnd => ({ ...headEdges(placed), y: headY(placed.event.height) });
  const joints = jointsOf(bars);
  const slides = joints
    .filter(({ exit }) => SIGNS[exit.sign].drawn.as === 'line')
    .map(({ exit, from, to, edge }) => slideMark(exit, from && endOf(from), to && endOf(to), edge));
  const stubs = eventsOf(bars).flatMap((placed) => stubMarks(placed, endOf));
  const ink = skylineOf(staff);
  const slurs = joints
    .filter(({ exit }) => SIGNS[exit.sign].drawn.as === 'curve')
    .map((joint) => slurMark(joint, ink));
  return [...slides, ...stubs, ...slurs];
}

/** Where a fret number stands. */
export interface FretPlace extends SlideEnd {
  readonly top: number;
}

/**
 * Curves and slides between the fret numbers of a tab.
 * @param fretOf the number of an event's note; null where the tab shows none
 */
export function tabLinks(
  bars: readonly PlacedBar[],
  fretOf: (placed: PlacedEvent) => FretPlace | null,
): readonly Mark[] {
  const joints = jointsOf(bars).map(({ exit, from, to, edge }): Mark => {
    const [start, end] = [from && fretOf(from), to && fretOf(to)];
    if (SIGNS[exit.sign].drawn.as === 'line') return slideMark(exit, start, end, edge);
    const top = start?.top ?? end?.top ?? 0;
    const left = start ? (start.left + start.right) / 2 + 1 : edge;
    const right = end ? (end.left + end.right) / 2 - 1 : edge;
    const bow = Math.min(6, 3 + (right - left) * 0.04);
    return curveMark(
      'slur',
      { x: left, y: (start?.top ?? top) - CURVE_GAP },
      { x: right, y: (end?.top ?? top) - CURVE_GAP },
      -1,
      bow,
    );
  });
  const stubs = eventsOf(bars).flatMap((placed) => stubMarks(placed, fretOf));
  return [...joints, ...stubs];
}
