/** How a row of notes moves from each to the next. */
export interface Moves {
  /** Moves that go on the same way as the one before. */
  readonly onward: number;
  /** Steps and half steps. */
  readonly stepwise: number;
  /** Fifths and more, octaves apart. */
  readonly leaps: number;
  /** Notes that strike the one before once more. */
  readonly again: number;
}

/** A leap that the ear minds; an octave is a figure of its own. */
const LEAP = 7;
const OCTAVE = 12;

/** Counts the moves of a row of notes. @param pitches MIDI numbers, or half steps above one of them */
export function countMoves(pitches: readonly number[]): Moves {
  let [onward, stepwise, leaps, again] = [0, 0, 0, 0];
  let before = 0;
  for (let index = 1; index < pitches.length; index += 1) {
    const move = (pitches[index] ?? 0) - (pitches[index - 1] ?? 0);
    const size = Math.abs(move);
    if (move * before > 0) onward += 1;
    if (size === 1 || size === 2) stepwise += 1;
    if (size >= LEAP && size !== OCTAVE) leaps += 1;
    if (size === 0) again += 1;
    before = move;
  }
  return { onward, stepwise, leaps, again };
}
