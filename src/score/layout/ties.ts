import type { Mark } from '../ink';
import type { ContentEvent } from '../notation/types';
import { curveMark } from './curve';
import type { MeasuredBar } from './measure-bar';
import { type PlacedBar, xOfTick } from './placed';
import { HALF_HEAD, headY } from './staff';

interface TieEnds {
  readonly from: number;
  readonly to: number;
  /** Of the heads, in steps above the middle line. */
  readonly height: number;
  /** Bows under the heads. */
  readonly hangs: boolean;
}

/** How far a tie keeps from the heads. */
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
  const ties: Mark[] = [];
  bars.forEach((placed, barIndex) => {
    const { content, specs } = placed.bar;
    const { events } = content;
    events.forEach((event, index) => {
      const x = xOfTick(placed, event.start);
      const from = x + HALF_HEAD + 1.5;
      const up = specs[index]?.stem === 'up';
      const tie = (hangs: boolean, begin: number, end: number): void => {
        for (const side of tieSides(event, hangs)) ties.push(tieMark({ ...side, from: begin, to: end }));
      };
      if (event.tiedIn && barIndex === 0) {
        tie(up, Math.min(placed.content + 3, x - 16), x - HALF_HEAD - 1.5);
      }
      const next = events[index + 1];
      if (event.tied && next) {
        tie(up && specs[index + 1]?.stem === 'up', from, xOfTick(placed, next.start) - HALF_HEAD - 1.5);
      }
      if (!event.tiedOut) return;
      const nextBar = bars[barIndex + 1];
      const following = nextBar?.bar ?? after;
      const goesOn = following?.content.events[0]?.tiedIn === true;
      const to = nextBar && goesOn ? xOfTick(nextBar, 0) - HALF_HEAD - 1.5 : placed.right - 3;
      tie(up && !(goesOn && following.specs[0]?.stem === 'down'), from, to);
    });
  });
  return ties;
}
