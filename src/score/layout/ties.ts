import { SIGNS } from '../../core/base';
import { boxOf, type Mark } from '../ink';
import type { ContentEvent } from '../notation/types';
import { TIE_IN_ROOM } from './columns';
import { curveMark } from './curve';
import { END_WIDTH, type MeasuredBar } from './measure-bar';
import { type PlacedBar, xOfTick } from './placed';
import { HALF_HEAD, headY } from './style';

interface TieEnds {
  readonly from: number;
  readonly to: number;
  /** Of the heads, in steps above the middle line. */
  readonly height: number;
  /** Bows under the heads. */
  readonly hangs: boolean;
}

/** White between a tie and a head, a bar line or the dots of a repeat. */
const AWAY = 1.5;
const FROM_LINE = 3;
/** A shorter tie reaches over its heads, so far at most, but never through a stem. */
const SHORTEST = 16;
const MOST_OVER = 4;
/** How far a tie keeps from the heads, up or down. */
const TIE_GAP = 7.5;

function tieMark({ from, to, height, hangs }: TieEnds): Mark {
  const away = hangs ? 1 : -1;
  const y = headY(height) + away * TIE_GAP;
  const bow = Math.min(10, 3.5 + (to - from) * 0.08);
  return curveMark('tie', { x: from, y }, { x: to, y }, away, bow);
}

/** Heights of the heads that are tied; of several, the upper half of the ties bows up, the lower half down. */
function tieSides(
  { height, heads }: ContentEvent,
  hangs: boolean,
): readonly { readonly height: number; readonly hangs: boolean }[] {
  if (heads === undefined) return [{ height, hangs }];
  return heads.map((head, index) => ({ height: head.height, hangs: index < heads.length / 2 }));
}

/**
 * The ties of one staff: a tie bows under the heads when all stems go up, else over them.
 * @param after the bar that begins the next system
 */
export function tieMarks(bars: readonly PlacedBar[], after: MeasuredBar | undefined): readonly Mark[] {
  return bars.flatMap((placed, barIndex) =>
    placed.bar.content.events.flatMap((event, index) => {
      const ends = [tieInto(placed, index, barIndex === 0), tieOn(bars, barIndex, index, after)];
      return ends.flatMap((tie) =>
        tie === null ? [] : tieSides(event, tie.hangs).map((side) => tieMark({ ...tie, ...side })),
      );
    }),
  );
}

interface Tie {
  readonly from: number;
  readonly to: number;
  readonly hangs: boolean;
}

const isUp = (bar: MeasuredBar, index: number): boolean => bar.specs[index]?.stem === 'up';

/** A tie that leads to a note and begins out of sight: in another system, at a repeat's end, before another ending. */
function tieInto({ bar, content, columnXs }: PlacedBar, index: number, beginsSystem: boolean): Tie | null {
  const { tiedIn } = bar.content.events[index] ?? {};
  if (!(tiedIn === 'elsewhere' || (tiedIn === 'left' && beginsSystem))) return null;
  // The note may have an accidental, because elsewhere it is struck.
  const ink = boxOf(bar.ink[index] ?? [])?.left ?? 0;
  const to = (columnXs[0] ?? 0) + Math.min(-HALF_HEAD, ink) - AWAY;
  const near = to - TIE_IN_ROOM + FROM_LINE;
  return {
    from: tiedIn === 'left' ? Math.min(content + FROM_LINE, near) : near,
    to,
    hangs: isUp(bar, index),
  };
}

/** A tie from a note to the next one, or to the bar line where it leads elsewhere. */
function tieOn(
  bars: readonly PlacedBar[],
  barIndex: number,
  index: number,
  after: MeasuredBar | undefined,
): Tie | null {
  const placed = bars[barIndex];
  const event = placed?.bar.content.events[index];
  if (placed === undefined || event === undefined) return null;
  const { bar, right } = placed;
  const from = xOfTick(placed, event.start) + HALF_HEAD + AWAY;
  const next = bar.content.events[index + 1];
  if (event.tied && next) {
    const to = xOfTick(placed, next.start) - HALF_HEAD - AWAY;
    const hangs = isUp(bar, index) && isUp(bar, index + 1);
    const over = Math.min(MOST_OVER, Math.max(0, (SHORTEST - (to - from)) / 2));
    // Neither through a stem nor through what stands at the head.
    const free =
      (hangs || !isUp(bar, index)) && !event.signs.some((sign) => SIGNS[sign].drawn.as === 'at the head');
    return { from: free ? from - over : from, to: to + over, hangs };
  }
  if (!event.tiedOut) return null;
  const nextBar = bars[barIndex + 1];
  const following = nextBar?.bar ?? after;
  const goesOn = following?.content.events[0]?.tiedIn === 'left';
  const to =
    nextBar && goesOn
      ? xOfTick(nextBar, 0) - HALF_HEAD - AWAY
      : right - END_WIDTH[bar.content.end] - FROM_LINE;
  return { from, to, hangs: isUp(bar, index) && !(goesOn && following.specs[0]?.stem === 'down') };
}
