import type { Result } from '../core/base';
import type { Performance, PlayPlace, PlayStep } from '../core/performance';
import type { Part } from '../core/playing';

/**
 * Which parts are heard, and how loud each is against its place in the mix: 1 where nothing is said, less below it. The
 * count-in of a performance sounds whether the click is on or off.
 */
export type Mix = Readonly<Record<Part, boolean>> & {
  readonly volumes?: Readonly<Partial<Record<Part, number>>>;
};

export interface PlayRequest {
  /** In order, without a gap between them; never empty. */
  readonly steps: readonly PlayStep[];
  readonly mix: Mix;
}

export type PlayerState =
  /** Nothing sounds. `fault` is a sentence for the person when the last attempt failed or was cut short. */
  | { readonly kind: 'stopped'; readonly fault: string | null }
  /** Asked to play; the first sound is being made. */
  | { readonly kind: 'preparing' }
  | { readonly kind: 'playing' };

export interface PlayPosition {
  /** The place in all that is played, where it could go on after a pause. */
  readonly place: PlayPlace;
  /** The performance that is heard right now. */
  readonly performance: Performance;
  /** From the beginning of the performance, the count-in included; a fraction of a tick is kept. */
  readonly tick: number;
  /** Index into the performance's played bars; null in the count-in and in an empty bar. */
  readonly playedBar: number | null;
  /** Index of the written bar; null where `playedBar` is. */
  readonly bar: number | null;
}

/** Plays performances. No method throws: a fault is a sentence in the result and in the state. */
export interface Player {
  /**
   * Makes the next `play` quick: fetches the rest of the sound's code, starts the worker and lets it compute what a step
   * begins with, which the same step then begins with at once. Opens no audio device, and never fails: what is missing
   * then, `play` says. Does nothing while something plays.
   */
  prepare(step: PlayStep): void;
  /**
   * Stops what sounds and plays the request from its beginning, fading in gently. Call it from a click or a
   * key press, or the browser may keep the page silent. Resolves when the first sound is scheduled; a call
   * overtaken by another `play` or by `stop` resolves as a success without having sounded.
   */
  play(request: PlayRequest): Promise<Result<null, string>>;
  /** Silence at once. */
  stop(): void;
  /**
   * Goes on with another request (tempo, passage, feel, notes) without a gap. The same music at another tempo goes on
   * within a beat. Other music does so from the next bar line that can be met, with the bar that would have come next
   * where the new performance has it, else at the new performance's first bar. No count-in. When nothing plays, it does nothing. A later call replaces one that
   * has not been heard yet.
   */
  change(steps: readonly PlayStep[]): Promise<Result<null, string>>;
  /** Switches parts on and off while playing, within a few hundredths of a second and without a click. */
  setMix(mix: Mix): void;
  /**
   * Seconds that the sound is heard later than the browser knows, as through some wireless headphones; it changes
   * where the player says it is, not the sound.
   */
  setFurtherDelay(seconds: number): void;
  /** What is heard right now, the output's delay taken into account; null when nothing plays. */
  position(): PlayPosition | null;
  /** All that this player sounds, as a stream, for an ear beside its loudspeaker; null before it has sounded. */
  output(): MediaStream | null;
  state(): PlayerState;
  /** Calls `listener` after every change of state, until the returned function is called. */
  subscribe(listener: (state: PlayerState) => void): () => void;
  /** Stops, and frees the audio device and the worker. The player is silent for good. */
  dispose(): void;
}

/** Sound in numbers: channels of equal length, samples from −1 to 1. */
export interface StereoSound {
  readonly sampleRate: number;
  readonly left: Float32Array;
  readonly right: Float32Array;
}
