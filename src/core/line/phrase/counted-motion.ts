import { type Counted, share, sum } from './counted';
import { countMoves } from './moves';

/** Notes of an octave, which a line of many pitches has as many of. */
const OCTAVE = 12;

/** Share of a line that may be silent before more of it is no better (hand-set). */
const AIR = 0.4;

/** How the line moves from note to note, whatever its chords: what tells lines apart that readers marked high and low. */
export function motionCounted({ bars, flat }: Counted) {
  const pitches = flat.map(({ midi }) => midi);
  const { onward, stepwise, leaps, again } = countMoves(pitches);
  const moves = flat.length - 1;
  const time = sum(bars.map(({ ticks }) => ticks));
  const sounding = sum(flat.map(({ duration }) => duration));
  return {
    onward: share(onward, moves),
    stepwise: share(stepwise, moves),
    leaps: share(leaps, moves),
    struckAgain: share(again, moves),
    pitches: share(new Set(pitches).size, OCTAVE),
    airy: Math.min(AIR, share(time - sounding, time)),
  };
}
