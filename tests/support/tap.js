/**
 * An audio worklet that takes down, sample by sample, what passes by. It runs in the audio thread, so that a
 * busy page loses nothing.
 */
class Tap extends AudioWorkletProcessor {
  /** The blocks are counted: now and then `currentFrame` still names the block before. */
  frame = null;

  process([input]) {
    this.frame ??= currentFrame;
    this.port.postMessage({ frame: this.frame, left: input[0]?.slice() ?? null });
    this.frame += BLOCK;
    return true;
  }
}

/** Samples in a render quantum (Web Audio API, 4.1). */
const BLOCK = 128;

registerProcessor('tap', Tap);
