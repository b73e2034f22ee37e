import { type Counted, share } from './counted';

/** A leap that the ear minds: a fifth and more; an octave is its own figure. */
const LEAP = 7;
const OCTAVE = 12;

/** Share of a line that may be silent before more of it is no better (hand-set). */
const AIR = 0.4;

/** How the line moves from note to note, whatever its chords: what tells lines apart that readers marked high and low. */
export function motionCounted({ bars, flat }: Counted) {
  let [onward, stepwise, leaps, again] = [0, 0, 0, 0];
  let [before, sounding] = [0, 0];
  const pitches = new Set<number>();
  for (const [index, { midi, duration }] of flat.entries()) {
    const move = index === 0 ? 0 : midi - (flat[index - 1]?.midi ?? midi);
    const size = Math.abs(move);
    if (move * before > 0) onward += 1;
    if (size === 1 || size === 2) stepwise += 1;
    if (size >= LEAP && size !== OCTAVE) leaps += 1;
    if (size === 0 && index > 0) again += 1;
    before = move;
    sounding += duration;
    pitches.add(midi);
  }
  const moves = flat.length - 1;
  const time = bars.reduce((all, bar) => all + bar.ticks, 0);
  return {
    onward: share(onward, moves),
    stepwise: share(stepwise, moves),
    leaps: share(leaps, moves),
    struckAgain: share(again, moves),
    pitches: share(pitches.size, OCTAVE),
    airy: Math.min(AIR, time === 0 ? 0 : 1 - sounding / time),
  };
}
