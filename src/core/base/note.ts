import type { NoteMarks } from './marks';
import type { SpelledPitch } from './pitch';
import type { Fret, StringNumber, Ticks } from './units';

/** The teacher's own choice for a note, which the fingering search obeys. */
export interface Pins {
  readonly string?: StringNumber;
  readonly fret?: Fret;
  readonly finger?: Finger;
}

/** Fretting finger: 0 is the open string, 1 the index finger … 4 the little finger. */
export type Finger = 0 | 1 | 2 | 3 | 4;

/**
 * A note of the line as it is stored. Start counts from its bar's beginning. Silence is absence: rests are
 * computed when drawn. Straight eighths are stored straight; the feel swings them when they are played.
 */
export interface LineNote {
  readonly start: Ticks;
  readonly duration: Ticks;
  readonly pitch: SpelledPitch;
  /** The note goes on, without a new attack, as the first note of every bar that can follow. */
  readonly tiedOn?: boolean;
  /** How it is played beyond pitch and length; left out, plainly. */
  readonly marks?: NoteMarks;
  readonly pins?: Pins;
}
