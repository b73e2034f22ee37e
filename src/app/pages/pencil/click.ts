/** Seconds that a click sounds. */
const CLICK_S = 0.03;
/** Pitches of the click on one and on the other beats, in hertz. */
const PITCHES = { one: 1600, other: 1100 } as const;
const LOUDNESS = 0.25;

export interface Clicks {
  /** Milliseconds between a click's time and its sound. */
  readonly delay: () => number;
  readonly stop: () => void;
}

/**
 * Clicks at some times of the page's clock, in milliseconds. Where the browser gives no sound, what is shown has to do.
 * @param beats - the first of each bar is marked
 */
export function startClicks(beats: readonly { readonly at: number; readonly one: boolean }[]): Clicks {
  if (typeof AudioContext !== 'function') return { delay: () => 0, stop: () => undefined };
  const context = new AudioContext({ latencyHint: 'interactive' });
  const offset = context.currentTime - performance.now() / 1000;
  for (const { at, one } of beats) {
    const when = Math.max(0, offset + at / 1000);
    const tone = context.createOscillator();
    const gain = context.createGain();
    tone.frequency.value = one ? PITCHES.one : PITCHES.other;
    gain.gain.setValueAtTime(LOUDNESS, when);
    gain.gain.exponentialRampToValueAtTime(0.001, when + CLICK_S);
    tone.connect(gain).connect(context.destination);
    tone.start(when);
    tone.stop(when + CLICK_S);
  }
  return {
    delay: () => (context.baseLatency + (context.outputLatency || 0)) * 1000,
    stop: () => void context.close(),
  };
}
