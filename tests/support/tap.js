/**
 * An audio worklet that takes down, sample by sample, what passes by. It runs in the audio thread, so that a
 * busy page loses nothing.
 */
class Tap extends AudioWorkletProcessor {
  process([input]) {
    this.port.postMessage({ frame: currentFrame, left: input[0]?.slice() ?? null });
    return true;
  }
}

registerProcessor('tap', Tap);
