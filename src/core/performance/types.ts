import type { Bpm, MidiNumber, Ticks, Tone } from '../base';
import type { DrumSound } from '../feel';

interface TimedEvent {
  /** From the beginning of the performance (the count-in included), swung. */
  readonly start: Ticks;
  readonly duration: Ticks;
  /** 1–127, as MIDI counts it. */
  readonly velocity: number;
}

export interface PitchedEvent extends TimedEvent {
  readonly part: 'bass' | 'chops' | 'organ';
  readonly midi: MidiNumber;
  readonly muted: boolean;
  /** Where the string of a bass note is stopped; left out where no fingering is known. */
  readonly fret?: number;
  /** A bass note is played with the hand lightly on the strings, as the feel does throughout. */
  readonly damped?: true;
  /** The colour of a bass note; left out for a finger's plain pluck. */
  readonly tone?: Exclude<Tone, 'dead'>;
  /** How a bass note begins that is not plucked. */
  readonly attack?: Attack;
  /** Where its pitch slides; at most one at each end. */
  readonly glides?: readonly Glide[];
  /** It sounds on under the notes that follow. */
  readonly rings?: boolean;
  /** The next bass note follows without a pluck, from the same string. */
  readonly leadsOn?: true;
}

/** By a finger of the fretting hand, or as the string's own going on. */
export type Attack = 'hammered' | 'joined';

/** A slide into a note from another pitch, or out of it to another one. */
export interface Glide {
  readonly at: 'beginning' | 'end';
  /** The other pitch, from the note's own. */
  readonly halfSteps: number;
  readonly duration: Ticks;
}

export interface DrumEvent extends TimedEvent {
  readonly part: 'drums';
  readonly sound: DrumSound;
}

export interface ClickEvent extends TimedEvent {
  readonly part: 'click';
  readonly accent: boolean;
  /** The count-in sounds whether the click is on or off. */
  readonly countIn: boolean;
}

export type PerformanceEvent = PitchedEvent | DrumEvent | ClickEvent;

/** A bar as it is played: repeats are unfolded, so a written bar can come several times. */
export interface PlayedBar {
  /** Index of the written bar. */
  readonly bar: number;
  readonly start: Ticks;
  readonly duration: Ticks;
  /** The bass rests where it had played these bars: the student answers. */
  readonly answer?: true;
}

/** Everything that sounds, in time order; playback, MIDI and audio files all read this. */
export interface Performance {
  readonly tempo: Bpm;
  /** Length of the beat that the tempo counts, in ticks. */
  readonly beat: Ticks;
  /** What sounds once before the first round: the count-in, an intro, and the pickup of what is played again. */
  readonly countIn: Ticks;
  /** How much of that the band plays already: the intro and the pickup. */
  readonly intro: Ticks;
  /** The end of the round, or of the last hit's bar. */
  readonly end: Ticks;
  /** Where the last hit falls; null where there is none. */
  readonly ending: Ticks | null;
  readonly bars: readonly PlayedBar[];
  readonly events: readonly PerformanceEvent[];
}
