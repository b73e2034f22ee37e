/** Runs in the browser's audio thread: hears what the microphone takes in, and tells what it heard. */
import type { EarReport } from './messages';
import { createNoteEar } from './note-ear';

/** What the Web Audio specification gives a worklet, and TypeScript's library does not know. */
declare const sampleRate: number;
declare const currentTime: number;
declare const registerProcessor: (name: string, processor: unknown) => void;
declare const AudioWorkletProcessor: new () => { readonly port: MessagePort };

/** Seconds between two reports. */
const EVERY = 0.05;

/** The middle of both channels of what the page plays; null where it plays nothing. */
function inOne([left, right]: readonly Float32Array[]): Float32Array | null {
  if (left === undefined || right === undefined) return left ?? null;
  return left.map((value, index) => (value + (right[index] ?? 0)) / 2);
}

registerProcessor(
  'note-ear',
  class extends AudioWorkletProcessor {
    private readonly ear = createNoteEar(sampleRate);
    private taken = 0;
    private told = 0;

    process([input, played]: readonly (readonly Float32Array[])[]): boolean {
      const samples = input?.[0];
      if (samples === undefined) return true;
      const heard = this.ear.push(samples, inOne(played ?? []));
      this.taken += samples.length / sampleRate;
      if (heard.length > 0 || this.taken - this.told > EVERY) {
        this.told = this.taken;
        const report: EarReport = {
          heard,
          level: this.ear.level(),
          deafness: this.ear.deafness(),
          below: this.ear.below(),
          begin: currentTime + samples.length / sampleRate - this.taken,
          now: currentTime,
        };
        this.port.postMessage(report);
      }
      return true;
    }
  },
);
