import { barTicks, beatTicks, type Metre } from '../../../core/base';
import type { PlayPosition } from '../../../sound';

/** A stretch of the window from top to bottom, in CSS pixels. */
export interface Reach {
  readonly top: number;
  readonly bottom: number;
}

/**
 * How far the page goes down, in CSS pixels, so that a system and the one that is read next are in view: nothing where
 * both are, else as far as puts the system at the top. Where there is no room for both, one is enough; where there is none
 * for one, its end is seen, which is the tab.
 */
export function scrollAhead(coming: Reach, following: Reach | null, view: Reach): number {
  const last =
    following !== null && following.bottom - coming.top <= view.bottom - view.top ? following : coming;
  const inView = coming.top >= view.top && last.bottom <= view.bottom;
  if (inView) return 0;
  const tooHigh = coming.bottom - coming.top > view.bottom - view.top;
  return tooHigh ? coming.bottom - view.bottom : coming.top - view.top;
}

/**
 * The written bar that the eyes are on: the one that sounds, on its last beat the next one, and before the music begins
 * the first. With `goesRound` the first bar comes after the last one. Null where nothing is played.
 */
export function barToRead(position: PlayPosition, goesRound: boolean): number | null {
  const { performance, playedBar, tick } = position;
  const { bars, beat, countIn } = performance;
  if (playedBar === null) return tick < countIn || goesRound ? (bars[0]?.bar ?? null) : null;
  const here = bars[playedBar];
  if (here === undefined) return null;
  if (tick < here.start + here.duration - beat) return here.bar;
  const next = bars[playedBar + 1] ?? (goesRound ? bars[0] : undefined);
  return (next ?? here).bar;
}

/** The beat that the count-in has reached, from 1 in each of its bars; null when the music has begun. */
export function countedBeat({ performance, playedBar, tick }: PlayPosition, metre: Metre): number | null {
  if (playedBar !== null || tick >= performance.countIn) return null;
  return Math.floor((Math.max(0, tick) % barTicks(metre)) / beatTicks(metre)) + 1;
}
