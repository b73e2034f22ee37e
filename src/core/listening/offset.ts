import { apartWithinOctave, IN_TUNE } from './align';
import type { ExpectedNote, HeardNote } from './types';

/** Delays that are tried, in seconds: from a little early to wireless headphones, in steps of a hundredth. */
const TRIED = Array.from({ length: 61 }, (_, step) => step / 100 - 0.1);

/** Seconds within which a note is in its place. */
const NEAR = 0.035;

/**
 * How late all that is heard is, in seconds, where nothing has measured it: the delay with which most notes are in their
 * place. How early or late a student plays cannot be told from it.
 */
export function offsetOf(expected: readonly ExpectedNote[], heard: readonly HeardNote[]): number {
  const fits = (delay: number): number => {
    let [count, from] = [0, 0];
    for (const note of expected) {
      while ((heard[from]?.start ?? Number.POSITIVE_INFINITY) - delay < note.start - NEAR) from += 1;
      const sound = heard[from];
      if (sound === undefined || sound.start - delay > note.start + NEAR) continue;
      const apart = sound.midi === null ? 6 : apartWithinOctave(sound.midi, note.midi);
      // The middle of those that fit as well is the nearest one.
      if (apart <= IN_TUNE) count += 1 - Math.abs(sound.start - delay - note.start);
    }
    return count;
  };
  return TRIED.reduce((best, delay) => (fits(delay) > fits(best) ? delay : best), 0);
}
